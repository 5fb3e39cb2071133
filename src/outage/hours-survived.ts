import { requireWithin } from '../quantity/require-within';
import { NEGLIGIBLE_KWH } from './every-start';

export interface HoursSurvivedInput {
  /** Net stored energy of each hour of the record, which is a ring. */
  readonly netKwh: Float64Array;
  readonly capKwh: number;
  /** Longest outage looked at, whole hours; who lasts that long is given that number. */
  readonly limitHours: number;
  /** An hour above 0 ends it, whatever the charge. */
  readonly overloadKwh?: Float64Array;
}

/**
 * Hours until the first hour not fully served, for an outage that starts full at every hour; the last
 * hour counts by the share it was served. Long enough for D hours means at least D.
 *
 * Starting later from full never fails earlier: at the later start the store is at least as full. So
 * the end of the window only moves forward, and a queue of two stacks (Tangwongsan, Hirzel & Schneider,
 * DEBS 2017) keeps the fall left at its end: Q = max(Qg, Qf - Tg), as in `DrawdownPass`.
 */
export function hoursSurvived(
  input: HoursSurvivedInput,
  out = new Float64Array(input.netKwh.length),
): Float64Array {
  const { netKwh, capKwh, limitHours, overloadKwh } = input;
  requireWithin('capKwh', capKwh, { atLeast: 0, unit: 'kWh' });
  requireWithin('limitHours', limitHours, { atLeast: 1, unit: 'h' });
  const count = netKwh.length;
  const tailQ = new Float64Array(limitHours + 1);
  const full = capKwh + NEGLIGIBLE_KWH;
  let base = 0; // the front covers [start, middle), its tails counted from base
  let middle = 0;
  let end = 0;
  let sum = 0; // of the back, [middle, end)
  let fall = 0;
  for (let start = 0; start < count; start++) {
    if (end < start) end = start;
    if (start >= middle) {
      composeTails(netKwh, start, end, tailQ);
      base = start;
      middle = end;
      sum = 0;
      fall = 0;
    }
    const front = start < middle ? tailQ[start - base]! : 0;
    let partly = 0;
    while (end - start < limitHours) {
      const hour = end % count;
      if (overloadKwh !== undefined && overloadKwh[hour]! > 0) break;
      const a = netKwh[hour]!;
      const left = Math.max(fall, front - sum);
      if (a < 0 && left - a > full) {
        partly = Math.max(0, capKwh - left) / -a;
        break;
      }
      fall = Math.max(0, fall - a);
      sum += a;
      end += 1;
    }
    out[start] = end - start + partly;
  }
  return out;
}

/** The fall left at the end of each run [j, end), j from start on: what an outage from full still lacks. */
function composeTails(net: Float64Array, start: number, end: number, tailQ: Float64Array): void {
  let sum = 0;
  let fall = 0;
  for (let j = end - 1; j >= start; j--) {
    const a = net[j % net.length]!;
    fall = Math.max(fall, Math.max(-a, 0) - sum);
    sum += a;
    tailQ[j - start] = fall;
  }
}
