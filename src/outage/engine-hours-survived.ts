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
 * What an hour burns depends neither on the fuel left nor on the time since the start, so pointers that only move
 * forward give every start in one pass; it agrees with `walkOutage` of the same system. Throws RangeError for refills or a ragged record.
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
  const { burn, marks } = hoursOf(loadKw, engine);
  const out = new Float64Array(count);
  // Hours of each pointer since its start of the ring, and round the ring; each only ever moves forward.
  let [dry, fails, missed] = [0, 0, 0];
  let [dryAt, failsAt, missedAt] = [0, 0, 0];
  let burned = 0; // over [start, dry)
  for (let start = 0; start < count; start++) {
    const limit = start + limitHours;
    if (dry < start) {
      dry = start;
      dryAt = start;
      burned = 0;
    }
    while (dry < limit && burned + burn[dryAt]! <= engine.fuelAtStart) {
      burned += burn[dryAt]!;
      dry += 1;
      dryAt = dryAt + 1 === count ? 0 : dryAt + 1;
    }
    if (fails < start) {
      fails = start;
      failsAt = start;
    }
    while (fails < limit && (marks[failsAt]! & CANNOT) === 0) {
      fails += 1;
      failsAt = failsAt + 1 === count ? 0 : failsAt + 1;
    }
    // Fuel that is gone is missed first in the next hour that wants something.
    if (missed < dry) {
      missed = dry;
      missedAt = dryAt;
    }
    while (missed < limit && (marks[missedAt]! & WANTS) === 0) {
      missed += 1;
      missedAt = missedAt + 1 === count ? 0 : missedAt + 1;
    }
    out[start] = Math.min(fails, missed) - start;
    if (dry > start) burned -= burn[start]!;
  }
  return out;
}

/** The hour wants something; the hour wants more than is given. */
const WANTS = 1;
const CANNOT = 2;

/** What each hour burns, and its marks. */
function hoursOf(loadKw: Float64Array, { ratedKw, fuelLine, runsByHour }: WalkEngine) {
  const burn = new Float64Array(loadKw.length);
  const marks = new Uint8Array(loadKw.length);
  const { noLoadPerHour, perKwh } = fuelLine;
  for (let t = 0, hour = 0; t < burn.length; t++, hour = hour === 23 ? 0 : hour + 1) {
    const wanted = loadKw[t]!;
    let given = 0;
    if (runsByHour[hour] !== 0) {
      given = Math.min(ratedKw, wanted);
      burn[t] = noLoadPerHour + perKwh * given;
    }
    const wants = wanted > NEGLIGIBLE_KWH ? WANTS : 0;
    // More than it gives, or wanted while its timetable has it off.
    marks[t] = wanted - given > NEGLIGIBLE_KWH ? wants | CANNOT : wants;
  }
  return { burn, marks };
}
