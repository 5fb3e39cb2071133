import { type ByMonth, forEachMonth, meanByMonth } from './by-month';
import { chargeForEveryStart, NEGLIGIBLE_KWH } from './every-start';

/** 12 hours, 1, 3, 7 and 14 days. */
export const OUTAGE_LENGTHS: readonly number[] = [12, 24, 72, 168, 336];

/** Share of start hours that ride through an outage of `hours`, by month of the start. */
export interface RideThroughOdds extends ByMonth {
  readonly hours: number;
}

/**
 * The odds from a full store, for every length at once, from what `hoursSurvived` gives (its limit at
 * least the longest length). Months without a start hour, and records shorter than the outage: `null`.
 */
export function oddsFromFull(
  survivedHours: Float64Array,
  lengths: readonly number[] = OUTAGE_LENGTHS,
): RideThroughOdds[] {
  return lengths.map((hours) => {
    const starts = survivedHours.length < hours ? 0 : survivedHours.length;
    return { hours, ...shareByMonth(survivedHours.subarray(0, starts), hours) };
  });
}

/** Share of the values that reach `least`, counted in plain loops: this runs for every route and length. */
function shareByMonth(values: Float64Array, least: number): ByMonth {
  const yes = new Float64Array(12);
  const all = new Float64Array(12);
  forEachMonth(values.length, (month, from, upTo) => {
    let count = 0;
    for (let s = from; s < upTo; s++) if (values[s]! >= least) count += 1;
    yes[month]! += count;
    all[month]! += upTo - from;
  });
  const months = Array.from(yes, (count, month) => (all[month]! > 0 ? count / all[month]! : null));
  const total = yes.reduce((sum, count) => sum + count, 0);
  return { months, all: values.length > 0 ? total / values.length : null };
}

export interface OddsFromChargeInput {
  readonly netKwh: Float64Array;
  readonly capKwh: number;
  /** Charge when the outage starts: one for all, or one for each start hour, kWh. */
  readonly startKwh: number | Float64Array;
  readonly overloadKwh?: Float64Array;
  readonly lengths?: readonly number[];
}

/** The odds from the charge the store happens to hold when the outage starts. */
export function oddsFromCharge(input: OddsFromChargeInput): RideThroughOdds[] {
  const { netKwh, capKwh, startKwh, overloadKwh, lengths = OUTAGE_LENGTHS } = input;
  const clear = overloadKwh && hoursToOverload(overloadKwh);
  return lengths.map((hours) => {
    const { thresholdKwh, unavoidableKwh } = chargeForEveryStart(netKwh, hours, capKwh);
    const rides = (s: number) => {
      if (clear && clear[s]! < hours) return 0;
      const charge = typeof startKwh === 'number' ? startKwh : startKwh[s]!;
      const lost = unavoidableKwh[s]! + Math.max(0, thresholdKwh[s]! - charge);
      return lost <= NEGLIGIBLE_KWH ? 1 : 0;
    };
    return { hours, ...meanByMonth(thresholdKwh.length, rides) };
  });
}

/** Hours from each hour to the next overloaded one round the ring; the record's length when there is none. */
function hoursToOverload(overloadKwh: Float64Array): Float64Array {
  const count = overloadKwh.length;
  const hours = new Float64Array(count);
  let next = Infinity;
  for (let t = 2 * count - 1; t >= 0; t--) {
    if (overloadKwh[t % count]! > 0) next = t;
    if (t < count) hours[t] = Math.min(next - t, count);
  }
  return hours;
}
