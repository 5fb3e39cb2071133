import { NEGLIGIBLE_KWH } from '../every-start';
import { batteryHour, type Shortfall } from './battery-hour';
import { engineHour, refill } from './engine-hour';
import { chargeShare, type Stores, storesAtStart } from './stores';
import { requireRecord, type WalkRecord, type WalkSystem } from './system';
import { vehicleHour } from './vehicle-hour';

/** Why the first hour that was not fully served was not. */
export type Failure =
  | 'battery-empty'
  | 'power-limit'
  | 'fuel-gone'
  | 'engine-off'
  | 'vehicle-gone'
  | 'no-source';

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
  readonly onHour?: (hour: WalkedHour) => void;
}

/**
 * One outage, hour by hour, with everything that depends on the charge or on the time since it began.
 * In each hour: refill when due; the ladder by the charge; sun; the engine by its timetable; the vehicle
 * when the battery is low; the battery; the vehicle again for what is still missing.
 * Without engine, vehicle and ladder it is the rule of `netEnergy`, and agrees with the passes.
 */
export function walkOutage(input: WalkInput): Walked {
  const { system, record, start, outageHours, startKwh, onHour } = input;
  requireRecord(record, system);
  const count = record.solarKw.length;
  const stores = storesAtStart(system, startKwh);
  const shortfall: Shortfall = { emptyKwh: 0, overKwh: 0 };
  let hoursServed = outageHours;
  let failure: Failure | null = null;
  let unservedHours = 0;
  let unservedKwh = 0;
  let shedKwh = 0;
  for (let hours = 0; hours < outageHours; hours++) {
    const at = (start + hours) % count;
    if (system.engine) refill(system.engine, stores, hours);
    const shed = shedKw(system, record, stores, at);
    const wantedKwh = wantedKw(record, at) - shed;
    const missing = serve(system, record, stores, { at, wantedKwh }, shortfall);
    shedKwh += shed;
    if (missing > NEGLIGIBLE_KWH) {
      unservedHours += 1;
      unservedKwh += missing;
      if (failure === null) {
        failure = whyFailed(system, { at, fuel: stores.fuel, overKwh: shortfall.overKwh });
        hoursServed = hours;
      }
    }
    onHour?.({ hours, wantedKwh, unservedKwh: missing, shedKwh: shed, ...stores });
  }
  return { hoursServed, failure, unservedHours, unservedKwh, shedKwh, left: stores };
}

/** Serve one hour from all sources; gives what is missing, kWh at the house. */
function serve(
  system: WalkSystem,
  record: WalkRecord,
  stores: Stores,
  { at, wantedKwh }: { at: number; wantedKwh: number },
  shortfall: Shortfall,
): number {
  const { battery, engine, vehicle } = system;
  const hourOfDay = at % 24;
  const mayCharge = record.mayCharge === undefined || record.mayCharge[at] !== 0;
  let deficitKw = wantedKwh - (battery ? record.solarKw[at]! : 0);
  if (engine) deficitKw -= engineHour(engine, battery, stores, { hourOfDay, deficitKw, mayCharge });
  let givenKwh = 0;
  if (vehicle && chargeShare(system, stores) < vehicle.helpBelow) {
    givenKwh = vehicleHour(vehicle, stores, { hourOfDay, wantedKwh: deficitKw, givenKwh });
    deficitKw -= givenKwh;
  }
  if (battery) batteryHour(battery, stores, { deficitKw, mayCharge }, shortfall);
  else {
    shortfall.emptyKwh = Math.max(0, deficitKw);
    shortfall.overKwh = 0;
  }
  const missing = shortfall.emptyKwh + shortfall.overKwh;
  if (!vehicle) return missing;
  return missing - vehicleHour(vehicle, stores, { hourOfDay, wantedKwh: missing, givenKwh });
}

function wantedKw(record: WalkRecord, at: number): number {
  let sum = 0;
  for (const load of record.loadsKw) sum += load[at]!;
  return sum;
}

/** Load the ladder has switched off in this hour. Without a battery there is no charge to go by. */
function shedKw(system: WalkSystem, record: WalkRecord, stores: Stores, at: number): number {
  if (system.battery === null) return 0;
  const share = chargeShare(system, stores);
  let sum = 0;
  for (const { load, offBelow } of system.ladder) {
    if (share < offBelow) sum += record.loadsKw[load]![at]!;
  }
  return sum;
}

function whyFailed(
  system: WalkSystem,
  { at, fuel, overKwh }: { at: number; fuel: number; overKwh: number },
): Failure {
  if (overKwh > NEGLIGIBLE_KWH) return 'power-limit';
  if (system.engine && fuel <= 0) return 'fuel-gone';
  if (system.battery) return 'battery-empty';
  if (system.engine) {
    return system.engine.runsByHour[at % 24] === 0 ? 'engine-off' : 'power-limit';
  }
  return system.vehicle ? 'vehicle-gone' : 'no-source';
}
