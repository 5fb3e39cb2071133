import { DAYS_PER_YEAR, MONTH_DAYS, MONTH_START } from './calendar';

/**
 * A smooth course over 365 days whose mean over each month is exactly the month's given mean:
 * straight lines between values at mid-month, those values moved until the means come out.
 */
export function monthCurve(means: readonly number[]): Float64Array {
  const nodes = [...means];
  let curve = throughNodes(nodes);
  for (let round = 0; round < 40; round++) {
    for (let m = 0; m < 12; m++) nodes[m]! += means[m]! - monthMean(curve, m);
    curve = throughNodes(nodes);
  }
  return curve;
}

/** Mean of a 365-day course over month `m`, 0 to 11. */
export function monthMean(curve: ArrayLike<number>, m: number): number {
  const start = MONTH_START[m]!;
  const days = MONTH_DAYS[m]!;
  let sum = 0;
  for (let day = start; day < start + days; day++) sum += curve[day]!;
  return sum / days;
}

function throughNodes(nodes: readonly number[]): Float64Array {
  const mid = MONTH_DAYS.map((days, m) => MONTH_START[m]! + (days - 1) / 2);
  const curve = new Float64Array(DAYS_PER_YEAR);
  for (let m = 0; m < 12; m++) {
    const next = (m + 1) % 12;
    const from = mid[m]!;
    const to = mid[next]! + (next === 0 ? DAYS_PER_YEAR : 0);
    for (let day = Math.ceil(from); day < to; day++) {
      const share = (day - from) / (to - from);
      curve[day % DAYS_PER_YEAR] = nodes[m]! * (1 - share) + nodes[next]! * share;
    }
  }
  return curve;
}
