import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import { MONTH_STARTS } from './month-of-hour';

/** A share, or a mean, for each month of the start hour and for all of them; `null` where no hour falls. */
export interface ByMonth {
  /** 12 entries, January first. */
  readonly months: readonly (number | null)[];
  readonly all: number | null;
}

/** Mean of `value(start)` over the start hours of each month; pass 0 or 1 for a share. */
export function meanByMonth(starts: number, value: (start: number) => number): ByMonth {
  const sums = new Float64Array(12);
  const counts = new Float64Array(12);
  forEachMonth(starts, (month, from, upTo) => {
    let sum = sums[month]!;
    for (let start = from; start < upTo; start++) sum += value(start);
    sums[month] = sum;
    counts[month]! += upTo - from;
  });
  const months = Array.from(sums, (sum, month) =>
    counts[month]! > 0 ? sum / counts[month]! : null,
  );
  return { months, all: starts > 0 ? sums.reduce((a, b) => a + b, 0) / starts : null };
}

/** Every calendar month of the record in turn: its number, its first hour and the hour after its last. */
export function forEachMonth(
  hours: number,
  visit: (month: number, from: number, upTo: number) => void,
): void {
  for (let year = 0; year < hours; year += HOURS_PER_YEAR) {
    for (let month = 0; month < 12 && year + MONTH_STARTS[month]! < hours; month++) {
      visit(month, year + MONTH_STARTS[month]!, Math.min(year + MONTH_STARTS[month + 1]!, hours));
    }
  }
}
