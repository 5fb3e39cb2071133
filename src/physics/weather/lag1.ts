import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_START } from './calendar';

/**
 * Correlation of each day with the day before, within months: from every month of every year its own
 * mean is taken away and its own spread divided out, so the course of the seasons does not count.
 * Null when nothing varies. `days` holds 365 values a year.
 */
export function lag1WithinMonths(days: ArrayLike<number>): number | null {
  let together = 0;
  let pairs = 0;
  for (let year = 0; year < days.length / DAYS_PER_YEAR; year++) {
    for (let m = 0; m < 12; m++) {
      const start = year * DAYS_PER_YEAR + MONTH_START[m]!;
      const z = standardised(days, start, start + MONTH_DAYS[m]!);
      if (z === null) continue;
      for (let d = 1; d < z.length; d++) together += z[d]! * z[d - 1]!;
      pairs += z.length - 1;
    }
  }
  return pairs > 0 ? together / pairs : null;
}

function standardised(days: ArrayLike<number>, from: number, to: number): Float64Array | null {
  const values = new Float64Array(to - from);
  for (let i = from; i < to; i++) values[i - from] = days[i]!;
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  const spread = Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length);
  return spread > 1e-6 ? values.map((v) => (v - mean) / spread) : null;
}

/** Days of a usual month. */
const MONTH_LENGTH = 30.4;

/**
 * Correlation of neighboring days in an endless series that shows, cut into months as in `lag1WithinMonths`, the
 * correlation `within`: taking away each month's own mean takes away part of what its days share.
 *
 *     E(within) = f - (1 + 3 f)/n
 *
 * Source: Kendall 1954, Biometrika 41, 403-404 (first order in 1/n), the form from memory; a test counts it in drawn series.
 */
export function endlessLag1(within: number): number {
  return (within + 1 / MONTH_LENGTH) / (1 - 3 / MONTH_LENGTH);
}

/**
 * Share of the variance of an endless series that is left within months on average, after each month's own mean is taken
 * away, when a day correlates with the day before by `lag1` (-1 to 1):
 *
 *     1 - (1/n) [1 + 2 sum (1 - k/n) f^k]
 */
export function varianceWithinMonths(lag1: number): number {
  const n = Math.round(MONTH_LENGTH);
  let together = 1;
  for (let k = 1; k < n; k++) together += 2 * (1 - k / n) * lag1 ** k;
  return 1 - together / n;
}
