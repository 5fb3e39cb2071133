import { requireWithin } from '../quantity/require-within';
import { NEGLIGIBLE_KWH } from './every-start';
import type { WalkEngine } from './walk/system';

export interface EngineHoursInput {
  /** What is wanted in each hour of the record, a ring of whole days from midnight, kW. */
  readonly loadKw: Float64Array;
  /** An engine alone, without battery and without refills. */
  readonly engine: WalkEngine;
  /** Longest outage looked at, whole hours. */
  readonly limitHours: number;
}

/**
 * Whole hours an engine alone carries its loads, for an outage that starts at every hour with the fuel at hand.
 *
 *   burn(t) = runs(t) (F0 + F1 min(load(t), rated))      hours(s) = min(first hour it cannot, first hour with sum burn > fuel) - s
 *
 * What an hour burns depends neither on the fuel left nor on the time since the start, so two pointers give every
 * start in one pass; it agrees with `walkOutage` of the same system. Throws RangeError for refills or a ragged record.
 */
export function engineHoursSurvived(input: EngineHoursInput): Float64Array {
  const { loadKw, engine, limitHours } = input;
  requireWithin('limitHours', limitHours, { atLeast: 1, unit: 'h' });
  if (Number.isFinite(engine.refillEveryHours)) {
    throw new RangeError('an engine with refills must be walked, hour by hour');
  }
  const count = loadKw.length;
  if (count === 0 || count % 24 !== 0) {
    throw new RangeError(`a record must be whole days: ${count} h`);
  }
  const { burn, toLoad, toFailure } = hoursOf(loadKw, engine, limitHours);
  const out = new Float64Array(count);
  let end = 0;
  let at = 0; // end, round the ring
  let burned = 0; // over [start, end)
  for (let start = 0; start < count; start++) {
    if (end < start) [end, at, burned] = [start, start, 0];
    while (end - start < limitHours && burned + burn[at]! <= engine.fuelAtStart) {
      burned += burn[at]!;
      end += 1;
      at = at + 1 === count ? 0 : at + 1;
    }
    // Fuel that is gone is missed first in the next hour that wants something.
    const dry = end - start < limitHours ? end - start + toLoad[at]! : limitHours;
    out[start] = Math.min(limitHours, dry, toFailure[start]!);
    if (end > start) burned -= burn[start]!;
  }
  return out;
}

interface EngineHours {
  /** Burned in each hour. */
  readonly burn: Float64Array;
  /** Hours from each to the next that wants something, and to the next it cannot carry, itself counted as 0. */
  readonly toLoad: Float64Array;
  readonly toFailure: Float64Array;
}

function hoursOf(
  loadKw: Float64Array,
  { ratedKw, fuelLine, runsByHour }: WalkEngine,
  limitHours: number,
): EngineHours {
  const count = loadKw.length;
  const [burn, toLoad, toFailure] = [0, 1, 2].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const { noLoadPerHour, perKwh } = fuelLine;
  let load = Infinity;
  let failure = Infinity;
  // Backwards round the ring, from so far past its end as an outage may run.
  const past = Math.min(limitHours, count);
  for (const [round, from] of [past - 1, count - 1].entries()) {
    for (let t = from, hour = from % 24; t >= 0; t--, hour = hour === 0 ? 23 : hour - 1) {
      const wanted = loadKw[t]!;
      const given = runsByHour[hour] === 0 ? 0 : Math.min(ratedKw, wanted);
      load = wanted > NEGLIGIBLE_KWH ? 0 : load + 1;
      // More than it gives, or wanted while its timetable has it off.
      failure = wanted - given > NEGLIGIBLE_KWH ? 0 : failure + 1;
      if (round === 0) continue;
      burn[t] = runsByHour[hour] === 0 ? 0 : noLoadPerHour + perKwh * given;
      toLoad[t] = load;
      toFailure[t] = failure;
    }
  }
  return { burn, toLoad, toFailure };
}
