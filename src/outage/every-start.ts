import { ChargePass } from './charge-pass';
import { DrawdownPass } from './drawdown-pass';

/**
 * The record is a ring: an outage that would run past its last hour goes on at its first. So every
 * hour is a start hour for every length, a longer outage is never rated better only because its
 * hardest starts fell off the end, and each season has as many starts as the record has years. The
 * seam joins one December to a January of the same place, as the seams between its years do.
 * A record shorter than the outage has no windows: the result is empty.
 */
export function neededForEveryStart(
  net: Float64Array,
  outageHours: number,
  out = new Float64Array(startHours(net, outageHours)),
): Float64Array {
  const pass = new DrawdownPass(outageHours);
  const starts = startHours(net, outageHours);
  if (starts === 0) return out.subarray(0, 0);
  const written = pass.push(net, out);
  pass.push(net.subarray(0, outageHours - 1), out, written);
  return out.subarray(0, starts);
}

/** What goes unserved from every start hour: `unavoidable + max(0, threshold - charge at the start)`. */
export interface ChargeNeeded {
  readonly thresholdKwh: Float64Array;
  readonly unavoidableKwh: Float64Array;
}

/** The charge an outage needs at its start, for every start hour of a ring of hours (see above). */
export function chargeForEveryStart(
  net: Float64Array,
  outageHours: number,
  capKwh: number,
): ChargeNeeded {
  const pass = new ChargePass(outageHours, capKwh);
  const starts = startHours(net, outageHours);
  const thresholdKwh = new Float64Array(starts);
  const unavoidableKwh = new Float64Array(starts);
  if (starts === 0) return { thresholdKwh, unavoidableKwh };
  const written = pass.push(net, thresholdKwh, unavoidableKwh);
  pass.push(net.subarray(0, outageHours - 1), thresholdKwh, unavoidableKwh, written);
  return { thresholdKwh, unavoidableKwh };
}

/** Rounding of sums of some hundred hours in single precision, kWh: below this nothing is missing. */
export const NEGLIGIBLE_KWH = 1e-5;

/**
 * Least charge at the start that leaves nothing unserved, kWh; `null` when a full store would not do.
 */
export function chargeToStartWith(
  thresholdKwh: number,
  unavoidableKwh: number,
  capKwh: number,
): number | null {
  if (unavoidableKwh > NEGLIGIBLE_KWH || thresholdKwh > capKwh + NEGLIGIBLE_KWH) return null;
  return Math.min(Math.max(thresholdKwh, 0), capKwh);
}

function startHours(net: Float64Array, outageHours: number): number {
  return net.length < outageHours ? 0 : net.length;
}
