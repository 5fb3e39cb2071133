import type { HourSeries } from '../quantity/hour-series';
import { requireWithin } from '../quantity/require-within';
import { NEGLIGIBLE_KWH } from './every-start';
import { borrowHours, giveBack } from './spare-hours';
import { forEachStretch } from './stretches-of-hours';
import type { WalkGenerator } from './walk/system';

export interface GeneratorHoursInput {
  /** What is wanted in each hour of the record, a ring of whole days from midnight, kW. */
  readonly loadKw: HourSeries;
  /** A generator alone, without battery and without refills. */
  readonly generator: WalkGenerator;
  /** Longest outage looked at, whole hours. */
  readonly limitHours: number;
}

/**
 * Whole hours a generator alone carries its loads, for an outage that starts at every hour with the fuel at hand.
 *
 *   burn(t) = runs(t) (F0 + F1 min(load(t), rated))      hours(s) = min(first hour it cannot, first hour with sum burn > fuel) - s
 *
 * What an hour burns depends neither on the fuel left nor on the time since the start, so pointers that only move
 * forward give every start in one pass; it agrees with `walkOutage` of the same system. Throws RangeError for refills or a ragged record.
 */
export function generatorHoursSurvived(input: GeneratorHoursInput): Float64Array {
  const { loadKw, generator, limitHours } = input;
  requireWithin('limitHours', limitHours, { atLeast: 1, unit: 'h' });
  if (Number.isFinite(generator.refillEveryHours)) {
    throw new RangeError('a generator with refills must be walked, hour by hour');
  }
  const count = loadKw.length;
  if (count === 0 || count % 24 !== 0) {
    throw new RangeError(`a record must be whole days: ${count} h`);
  }
  const out = new Float64Array(count);
  const burn = borrowHours(count);
  const marks = new Uint8Array(count);
  // Fuel that falls short by a rounding does not end an outage, as in a walk.
  const fuelAtStart = generator.fuelAtStart + generator.fuelLine.perKwh * NEGLIGIBLE_KWH;
  const pass = { burn, marks, fuelAtStart, limitHours, out };
  const ahead = { dry: 0, dryAt: 0, fails: 0, failsAt: 0, missed: 0, missedAt: 0, burned: 0 };
  forEachStretch(count, (from, upTo) => readHours(loadKw, generator, pass, from, upTo));
  forEachStretch(count, (from, upTo) => follow(pass, ahead, from, upTo));
  giveBack(burn);
  return out;
}

interface Pass {
  /** What each hour burns, and its marks. */
  readonly burn: Float64Array;
  readonly marks: Uint8Array;
  readonly fuelAtStart: number;
  readonly limitHours: number;
  readonly out: Float64Array;
}

/** Hours since the ring began, and the same round the ring; each only ever moves forward. */
interface Ahead {
  /** The hour in which the fuel gives out. */
  dry: number;
  dryAt: number;
  /** The hour that wants more than is given. */
  fails: number;
  failsAt: number;
  /** The hour in which missing fuel is noticed: the next that wants something. */
  missed: number;
  missedAt: number;
  /** Burned over [start, dry). */
  burned: number;
}

function follow(pass: Pass, ahead: Ahead, from: number, upTo: number): void {
  const { burn, marks, fuelAtStart, limitHours, out } = pass;
  let { dry, dryAt, fails, failsAt, missed, missedAt, burned } = ahead;
  const count = burn.length;
  for (let start = from; start < upTo; start++) {
    const limit = start + limitHours;
    if (dry < start) {
      dry = start;
      dryAt = start;
      burned = 0;
    }
    while (dry < limit && burned + burn[dryAt]! <= fuelAtStart) {
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
  Object.assign(ahead, { dry, dryAt, fails, failsAt, missed, missedAt, burned });
}

/** The hour wants something; the hour wants more than is given. */
const WANTS = 1;
const CANNOT = 2;

function readHours(
  loadKw: HourSeries,
  { ratedKw, fuelLine, runsByHour }: WalkGenerator,
  { burn, marks }: Pass,
  from: number,
  upTo: number,
): void {
  const { noLoadPerHour, perKwh } = fuelLine;
  for (let t = from, hour = from % 24; t < upTo; t++, hour = hour === 23 ? 0 : hour + 1) {
    const wanted = loadKw[t]!;
    let given = 0;
    burn[t] = 0;
    if (runsByHour[hour] !== 0) {
      given = Math.min(ratedKw, wanted);
      burn[t] = noLoadPerHour + perKwh * given;
    }
    const wants = wanted > NEGLIGIBLE_KWH ? WANTS : 0;
    // More than it gives, or wanted while its timetable has it off.
    marks[t] = wanted - given > NEGLIGIBLE_KWH ? wants | CANNOT : wants;
  }
}
