import { requireWithin } from '../quantity/require-within';
import { NEGLIGIBLE_KWH } from './every-start';
import { forEachStretch } from './stretches-of-hours';

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
  const pass = { netKwh, capKwh, limitHours, overloadKwh, out };
  const tailQ = new Float64Array(limitHours + 1);
  const queue = { tailQ, base: 0, middle: 0, end: 0, sum: 0, fall: 0 };
  forEachStretch(count, (from, upTo) => follow(pass, queue, from, upTo));
  return out;
}

interface Pass extends HoursSurvivedInput {
  readonly out: Float64Array;
}

/** The window of hours the outage has lasted so far, as two stacks. */
interface Queue {
  readonly tailQ: Float64Array;
  /** The front covers [start, middle), its tails counted from base. */
  base: number;
  middle: number;
  end: number;
  /** Sum and fall of the back, [middle, end). */
  sum: number;
  fall: number;
}

function follow(pass: Pass, queue: Queue, from: number, upTo: number): void {
  const { netKwh, capKwh, limitHours, overloadKwh, out } = pass;
  const { tailQ } = queue;
  let { base, middle, end, sum, fall } = queue;
  const count = netKwh.length;
  const full = capKwh + NEGLIGIBLE_KWH;
  for (let start = from; start < upTo; start++) {
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
      const hour = end < count ? end : end % count;
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
  Object.assign(queue, { base, middle, end, sum, fall });
}

/** The fall left at the end of each run [j, end), j from start on: what an outage from full still lacks. */
function composeTails(net: Float64Array, start: number, end: number, tailQ: Float64Array): void {
  let sum = 0;
  let fall = 0;
  for (let j = end - 1; j >= start; j--) {
    const a = net[j < net.length ? j : j % net.length]!;
    fall = Math.max(fall, Math.max(-a, 0) - sum);
    sum += a;
    tailQ[j - start] = fall;
  }
}
