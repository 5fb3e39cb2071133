/** Days of each month in a year without a leap day, the only kind of year the weather uses. */
export const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Day of the year, from 0, on which each month begins. */
export const MONTH_START = MONTH_DAYS.map((_, m) =>
  MONTH_DAYS.slice(0, m).reduce((sum, days) => sum + days, 0),
);

/** Month, 0 to 11, of each of the 365 days. */
export const MONTH_OF_DAY = MONTH_DAYS.flatMap((days, m) => new Array<number>(days).fill(m));

export const DAYS_PER_YEAR = 365;
export const HOURS_PER_YEAR = 8760;
