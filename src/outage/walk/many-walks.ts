import { sameSeries } from '../../quantity/hour-series';
import { FULL_WITHIN_KWH, quickWalk, walkBatteryGenerator } from './quick-walk';
import type { WalkBattery, WalkGenerator, WalkRecord, WalkSystem } from './system';
import type { Walked } from './walk';

/** One outage of many with the same system and record, followed to its first failure. */
export interface OneOutage {
  /** Hour of the record it starts at. */
  readonly start: number;
  readonly outageHours: number;
  readonly startKwh: number;
}

/**
 * A way to walk many outages of one system. Where a battery with a generator, without refills, feeds one class of loads,
 * what happens from a full battery on depends on neither the outage's start nor, while there is enough, on the fuel: each
 * stretch from full to full, about a day, is walked once and then leapt over. The hours served and the failure are those of
 * `quickWalk`; what is left agrees within rounding.
 */
export function manyWalks(system: WalkSystem, record: WalkRecord): (outage: OneOutage) => Walked {
  const { battery, generator, vehicle, ladder } = system;
  const plain = vehicle === null && ladder.length === 0 && record.loadsKw.length === 1;
  if (
    !plain ||
    battery === null ||
    generator === null ||
    Number.isFinite(generator.refillEveryHours)
  ) {
    return (outage) => quickWalk({ system, record, ...outage, untilFailure: true });
  }
  const stretches = stretchesOf(system, record, battery, generator);
  return (outage) => leap({ system, record, battery, generator, stretches }, outage);
}

interface Leaping {
  readonly system: WalkSystem;
  readonly record: WalkRecord;
  readonly battery: WalkBattery;
  readonly generator: WalkGenerator;
  readonly stretches: Stretches;
}

/** Fuel this near to what a stretch burns is walked hour by hour. */
const FUEL_MARGIN = 1e-6;

function leap(
  { system, record, battery, generator, stretches }: Leaping,
  outage: OneOutage,
): Walked {
  const { outageHours, startKwh } = outage;
  let { start } = outage;
  let fuel = generator.fuelAtStart;
  let hours = 0;
  while (startKwh >= battery.capKwh) {
    const long = stretches.hoursFrom(start);
    if (long === null || hours + long > outageHours) break;
    const burned = stretches.burnedFrom(start);
    if (!(fuel - burned > FUEL_MARGIN)) break;
    fuel -= burned;
    hours += long;
    start = (start + long) % record.solarKw.length;
  }
  const rest = { system, record, start, outageHours: outageHours - hours, startKwh };
  const walked = walkBatteryGenerator(rest, battery, generator, { fuel });
  return { ...walked, hoursServed: hours + walked.hoursServed };
}

interface Kept {
  readonly key: string;
  readonly record: WalkRecord;
  readonly stretches: Stretches;
}

let kept: Kept | null = null;

/** Stretches do not depend on the fuel at the start: a route asked about several times in a row keeps the last ones. */
function stretchesOf(
  system: WalkSystem,
  record: WalkRecord,
  battery: WalkBattery,
  generator: WalkGenerator,
): Stretches {
  const { fuelAtStart: _, ...burning } = generator;
  const key = JSON.stringify([battery, { ...burning, runsByHour: Array.from(burning.runsByHour) }]);
  if (kept?.key === key && sameHours(kept.record, record)) return kept.stretches;
  const room = kept?.stretches.giveUp(record.solarKw.length);
  const stretches = new Stretches({ system, record, battery, generator }, room);
  kept = { key, record, stretches };
  return stretches;
}

function sameHours(a: WalkRecord, b: WalkRecord): boolean {
  return (
    sameSeries(a.loadsKw[0]!, b.loadsKw[0]!) &&
    a.mayCharge === b.mayCharge &&
    sameSeries(a.solarKw, b.solarKw)
  );
}

/** A stretch this long or longer is walked hour by hour. */
const LONGEST_HOURS = 336;
/** More than any stretch burns. */
const PLENTY = 10_000;
const NONE = 65_535;

/** By the hour a stretch begins at: how long it is, 0 where that is not known yet, and what it burns. */
interface Room {
  readonly hours: Uint16Array;
  readonly burned: Float64Array;
}

const roomFor = (count: number): Room => ({
  hours: new Uint16Array(count),
  burned: new Float64Array(count),
});

/**
 * From an hour that begins with a full battery to the first such hour of a later day, worked out when first asked for.
 * Outages that start at any hour come together there, so that a day is walked but a few times.
 */
class Stretches {
  private room: Room | undefined;

  constructor(
    private readonly of: Omit<Leaping, 'stretches'>,
    room?: Room,
  ) {
    this.room = room;
  }

  /** Hours until it is full again; null where something goes unserved before that, or it takes too long. */
  hoursFrom(start: number): number | null {
    this.room ??= roomFor(this.of.record.solarKw.length);
    if (this.room.hours[start] === 0) this.work(start, this.room);
    const hours = this.room.hours[start]!;
    return hours === NONE ? null : hours;
  }

  /** Fuel burned until then, once that was asked. */
  burnedFrom(start: number): number {
    return this.room!.burned[start]!;
  }

  /** The room of these for others of so many hours, which forget what stood there; these begin anew where they are asked again. */
  giveUp(count: number): Room | undefined {
    const { room } = this;
    if (room?.hours.length !== count) return undefined;
    this.room = undefined;
    room.hours.fill(0);
    return room;
  }

  private work(start: number, room: Room): void {
    const { system, record, battery, generator } = this.of;
    const { capKwh } = battery;
    const outage = { system, record, start, outageHours: LONGEST_HOURS, startKwh: capKwh };
    const walked = walkBatteryGenerator(outage, battery, generator, {
      fuel: PLENTY,
      untilFullFrom: 23 - (start % 24),
    });
    const full = walked.failure === null && walked.left.chargeKwh >= capKwh - FULL_WITHIN_KWH;
    room.hours[start] = full ? walked.hoursServed : NONE;
    room.burned[start] = PLENTY - walked.left.fuel;
  }
}
