import { NEGLIGIBLE_KWH } from '../every-start';
import { type Failure, whyFailed } from './failure';
import { refill } from './generator-hour';
import { serveHour } from './serve-hour';
import { type Hour, type Stores, storeShare, storesAtStart } from './stores';
import { requireRecord, type WalkRecord, type WalkSystem } from './system';

/** An hour of the walk, for the picture. */
export interface WalkedHour {
  readonly hours: number;
  readonly wantedKwh: number;
  readonly unservedKwh: number;
  readonly shedKwh: number;
  readonly chargeKwh: number;
  readonly fuel: number;
  readonly vehicleKwh: number;
}

export interface Walked {
  /** Whole hours served before the first that was not; the outage's length when all were. */
  readonly hoursServed: number;
  readonly failure: Failure | null;
  readonly unservedHours: number;
  /** Wanted and on, but not served, kWh at the house. */
  readonly unservedKwh: number;
  /** Switched off by the ladder, kWh at the house. */
  readonly shedKwh: number;
  readonly left: Readonly<Stores>;
}

export interface WalkInput {
  readonly system: WalkSystem;
  readonly record: WalkRecord;
  /** Hour of the record the outage starts at. */
  readonly start: number;
  readonly outageHours: number;
  readonly startKwh: number;
  /** End the walk at the first hour not served: quicker, and the sums are then only up to it. */
  readonly untilFailure?: boolean;
  readonly onHour?: (hour: WalkedHour) => void;
}

/**
 * One outage, hour by hour, with everything that depends on the charge or on the time since it began.
 * In each hour: refill when due; the ladder by the charge; then the sources (`serveHour`).
 * Without generator, vehicle and ladder it is the rule of `netEnergy`, and agrees with the passes.
 */
export function walkOutage(input: WalkInput): Walked {
  requireRecord(input.record, input.system);
  return walkChecked(input);
}

/** The walk itself, for a record and system already checked once for many walks. */
export function walkChecked(input: WalkInput): Walked {
  const { system, record, start, outageHours, startKwh, untilFailure, onHour } = input;
  const { generator, battery, ladder } = system;
  const { solarKw, mayCharge } = record;
  const stores = storesAtStart(system, startKwh);
  const hour: Hour = newHour();
  let hoursServed = outageHours;
  let failure: Failure | null = null;
  let unservedHours = 0;
  let unservedKwh = 0;
  let shedKwh = 0;
  let refillAt = generator?.refillEveryHours ?? Infinity;
  for (let hours = 0, at = start; hours < outageHours; hours++, at++) {
    if (at === solarKw.length) at = 0;
    if (generator && hours === refillAt) {
      refill(generator, stores);
      refillAt += generator.refillEveryHours;
    }
    const shed = ladder.length > 0 ? shedKw(system, record, stores, at) : 0;
    const wantedKwh = wantedKw(record, at) - shed;
    hour.hourOfDay = at % 24;
    hour.mayCharge = mayCharge === undefined || mayCharge[at] !== 0;
    hour.deficitKw = battery ? wantedKwh - solarKw[at]! : wantedKwh;
    const missing = serveHour(system, stores, hour);
    shedKwh += shed;
    onHour?.({ hours, wantedKwh, unservedKwh: missing, shedKwh: shed, ...stores });
    if (missing <= NEGLIGIBLE_KWH) continue;
    unservedHours += 1;
    unservedKwh += missing;
    if (failure !== null) continue;
    failure = whyFailed(system, stores, hour);
    hoursServed = hours;
    if (untilFailure) break;
  }
  return { hoursServed, failure, unservedHours, unservedKwh, shedKwh, left: stores };
}

function newHour(): Hour {
  return { hourOfDay: 0, mayCharge: true, deficitKw: 0, vehicleKwh: 0, emptyKwh: 0, overKwh: 0 };
}

function wantedKw({ loadsKw }: WalkRecord, at: number): number {
  let sum = 0;
  for (let i = 0; i < loadsKw.length; i++) sum += loadsKw[i]![at]!;
  return sum;
}

/** Load the ladder has switched off in this hour. */
function shedKw(system: WalkSystem, record: WalkRecord, stores: Stores, at: number) {
  const { ladder } = system;
  const share = storeShare(system, stores);
  let sum = 0;
  for (let i = 0; i < ladder.length; i++) {
    const { load, offBelow } = ladder[i]!;
    if (share < offBelow) sum += record.loadsKw[load]![at]!;
  }
  return sum;
}
