import { HOURS_PER_YEAR, MONTH_DAYS, MONTH_OF_DAY, MONTH_START } from '../physics/weather/calendar';

/** First hour of each month, January at 0, and the end of the year as a thirteenth entry. */
export const MONTH_STARTS: readonly number[] = [
  ...MONTH_START.map((day) => 24 * day),
  HOURS_PER_YEAR,
];

export const HOURS_IN_MONTH: readonly number[] = MONTH_DAYS.map((days) => 24 * days);

/** Month 0..11 of each hour of the year. */
const MONTHS = Uint8Array.from(
  { length: HOURS_PER_YEAR },
  (_, hour) => MONTH_OF_DAY[Math.floor(hour / 24)]!,
);

/** Month 0..11 of an hour counted from the start of a record whose first hour is midnight of 1 January. */
export function monthOfHour(hour: number): number {
  return MONTHS[hour % HOURS_PER_YEAR]!;
}
