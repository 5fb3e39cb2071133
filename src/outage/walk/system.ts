import type { FuelLine } from '../../physics/generator-fuel';
import type { HourSeries } from '../../quantity/hour-series';
import type { StoreLimits } from '../net-energy';

/** A battery behind an inverter. Sun reaches the house only through it. */
export interface WalkBattery {
  /** Usable energy, kWh inside the battery. */
  readonly capKwh: number;
  readonly limits: StoreLimits;
}

/** A generator that runs by timetable, as a household runs it. It charges the battery with what is left over. */
export interface WalkGenerator {
  /** Continuous output at the site, kW. */
  readonly ratedKw: number;
  readonly fuelLine: FuelLine;
  /** 1 where it runs, by hour of the day. */
  readonly runsByHour: ArrayLike<number>;
  /** Fuel that can be burned when the outage begins; Infinity for piped gas. */
  readonly fuelAtStart: number;
  /** What each refill brings, up to `tankSize`. */
  readonly refill: number;
  /** Hours from refill to refill, the first that long after the start; Infinity for none. */
  readonly refillEveryHours: number;
  readonly tankSize: number;
}

/** A vehicle that can feed the house. It is not charged during the outage. */
export interface WalkVehicle {
  /** What it may give over the whole outage, kWh inside its pack, after the driving reserve. */
  readonly storeKwh: number;
  readonly outKw: number;
  /** From pack to house, 0..1. */
  readonly efficiency: number;
  /** Drawn from the pack in every hour at home by its outlet being on, kW. */
  readonly idleKw: number;
  /** 1 where it stands at home, by hour of the day. */
  readonly homeByHour: ArrayLike<number>;
  /** It takes over the load when the battery is below this share; above, it only fills gaps. */
  readonly helpBelow: number;
}

/** A load goes off while the store is below a share at the start of an hour, and comes back above it. */
export interface WalkRung {
  /** Which of the load classes; class 0, *must keep running*, is on no rung. */
  readonly load: number;
  readonly offBelow: number;
}

export interface WalkSystem {
  readonly battery: WalkBattery | null;
  readonly generator: WalkGenerator | null;
  readonly vehicle: WalkVehicle | null;
  readonly ladder: readonly WalkRung[];
}

/** The record the outages are cut from: whole days from midnight, a ring, all arrays of one length. */
export interface WalkRecord {
  /** Load of each class, kW; the first is *must keep running*. */
  readonly loadsKw: readonly HourSeries[];
  readonly solarKw: HourSeries;
  /** 0 where the cells are too cold to take charge. */
  readonly mayCharge?: Uint8Array;
}

/** Refuse a record that is not whole days of equal arrays, and a rung for a load that may not be shed. */
export function requireRecord(record: WalkRecord, system: WalkSystem): void {
  const hours = record.solarKw.length;
  if (hours === 0 || hours % 24 !== 0)
    throw new RangeError(`a record must be whole days: ${hours} h`);
  for (const array of [...record.loadsKw, record.mayCharge ?? record.solarKw]) {
    if (array.length !== hours) {
      throw new RangeError(`the record's arrays must be equal: ${array.length} h and ${hours} h`);
    }
  }
  for (const { load } of system.ladder) {
    if (!(load >= 1 && load < record.loadsKw.length)) {
      throw new RangeError(`a rung must be for load 1 to ${record.loadsKw.length - 1}: ${load}`);
    }
  }
}
