import { monthOfHour } from './month-of-hour';

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
  for (let start = 0; start < starts; start++) {
    const month = monthOfHour(start);
    sums[month]! += value(start);
    counts[month]! += 1;
  }
  const months = Array.from(sums, (sum, month) =>
    counts[month]! > 0 ? sum / counts[month]! : null,
  );
  return { months, all: starts > 0 ? sums.reduce((a, b) => a + b, 0) / starts : null };
}
