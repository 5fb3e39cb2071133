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
  const burn = burnByHour(loadKw, engine);
  const wants = hoursToNext(count, (t) => loadKw[t]! > NEGLIGIBLE_KWH);
  const cannot = hoursToNext(count, (t) => outOfReach(loadKw[t]!, engine, t % 24));
  const out = new Float64Array(count);
  let end = 0;
  let burned = 0; // over [start, end)
  for (let start = 0; start < count; start++) {
    if (end < start) [end, burned] = [start, 0];
    while (end - start < limitHours && burned + burn[end % count]! <= engine.fuelAtStart) {
      burned += burn[end % count]!;
      end += 1;
    }
    // Fuel that is gone is missed first in the next hour that wants something.
    const dry = end - start < limitHours ? end - start + wants[end % count]! : limitHours;
    out[start] = Math.min(limitHours, dry, cannot[start]!);
    if (end > start) burned -= burn[start]!;
  }
  return out;
}

function burnByHour(loadKw: Float64Array, engine: WalkEngine): Float64Array {
  const { ratedKw, fuelLine, runsByHour } = engine;
  const burn = new Float64Array(loadKw.length);
  for (let t = 0; t < burn.length; t++) {
    if (runsByHour[t % 24] === 0) continue;
    burn[t] = fuelLine.noLoadPerHour + fuelLine.perKwh * Math.min(ratedKw, loadKw[t]!);
  }
  return burn;
}

/** More than it gives, or wanted while its timetable has it off. */
function outOfReach(loadKw: number, { ratedKw, runsByHour }: WalkEngine, hourOfDay: number) {
  return loadKw - (runsByHour[hourOfDay] === 0 ? 0 : ratedKw) > NEGLIGIBLE_KWH;
}

/** Hours from each hour to the next of a kind, itself counted as 0, round the ring; Infinity where there is none. */
function hoursToNext(count: number, is: (t: number) => boolean): Float64Array {
  const hours = new Float64Array(count);
  let next = Infinity;
  for (let t = 2 * count - 1; t >= 0; t--) {
    if (is(t % count)) next = t;
    if (t < count) hours[t] = next - t;
  }
  return hours;
}
