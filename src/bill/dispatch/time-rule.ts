import type { DispatchProblem } from './dispatch-problem';
import type { HourRule } from './rule';

/**
 * Time shifting: charge in the hours of the day's lowest price, cover the house in the hours of its highest, rest
 * otherwise. A day of one price is rested through.
 */
export function timeRule(problem: DispatchProblem): HourRule {
  const days = Math.ceil(problem.loadKwh.length / 24);
  const low = new Float64Array(days).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(days).fill(Number.NEGATIVE_INFINITY);
  for (let h = 0; h < problem.loadKwh.length; h++) {
    const day = Math.floor(h / 24);
    low[day] = Math.min(low[day]!, problem.importPrice[h]!);
    high[day] = Math.max(high[day]!, problem.importPrice[h]!);
  }
  return (h) => {
    const day = Math.floor(h / 24);
    const price = problem.importPrice[h]!;
    if (low[day] === high[day]) return 0;
    if (price === low[day]) return Number.POSITIVE_INFINITY;
    if (price < high[day]!) return 0;
    return -Math.max(0, problem.loadKwh[h]! - problem.solarKwh[h]!);
  };
}
