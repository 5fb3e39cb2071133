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
 * least the longest length), each a whole number of hours. Months without a start hour, and records shorter than the outage: `null`.
 */
export function oddsFromFull(
  survivedHours: Float64Array,
  lengths: readonly number[] = OUTAGE_LENGTHS,
): RideThroughOdds[] {
  const byHours = countByHours(survivedHours, Math.max(...lengths));
  return lengths.map((hours) => ({ hours, ...sharesFrom(byHours, survivedHours.length, hours) }));
}

/** How many start hours of each month (12 rows, January first) survive 0, 1, .. `longest` whole hours, in one pass. */
function countByHours(survivedHours: Float64Array, longest: number): readonly Float64Array[] {
  const rows = Array.from({ length: 12 }, () => new Float64Array(longest + 1));
  forEachMonth(survivedHours.length, (month, from, upTo) => {
    const row = rows[month]!;
    for (let s = from; s < upTo; s++) {
      const hours = survivedHours[s]!;
      row[hours >= longest ? longest : hours | 0]! += 1;
    }
  });
  return rows;
}

function sharesFrom(byHours: readonly Float64Array[], starts: number, least: number): ByMonth {
  if (starts < least) return { months: byHours.map(() => null), all: null };
  const yes = byHours.map((row) => sum(row.subarray(least)));
  const all = byHours.map(sum);
  return {
    months: yes.map((count, month) => (all[month]! > 0 ? count / all[month]! : null)),
    all: starts > 0 ? sum(yes) / starts : null,
  };
}

function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
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
