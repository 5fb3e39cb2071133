const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Hours of a year without a leap day: every year of a weather record has these. */
export const HOURS_A_YEAR = 8760;

/** First hour of each month, January at 0, and the end of the year as a thirteenth entry. */
export const MONTH_STARTS: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map(
  (month) => 24 * DAYS.slice(0, month).reduce((sum, days) => sum + days, 0),
);

export const HOURS_IN_MONTH: readonly number[] = DAYS.map((days) => 24 * days);

/** Month 0..11 of each hour of the year. */
const MONTHS = Uint8Array.from({ length: HOURS_A_YEAR }, (_, hour) =>
  MONTH_STARTS.findLastIndex((start) => start <= hour),
);

/** Month 0..11 of an hour counted from the start of a record whose first hour is midnight of 1 January. */
export function monthOfHour(hour: number): number {
  return MONTHS[hour % HOURS_A_YEAR]!;
}
