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
  const stretches = new Stretches(system, record, battery, generator);
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

/**
 * From an hour that begins with a full battery to the first such hour of a later day, worked out when first asked for.
 * Outages that start at any hour come together there, so that a day is walked but a few times.
 */
class Stretches {
  private readonly hours: Uint16Array;
  private readonly burned: Float64Array;

  constructor(
    private readonly system: WalkSystem,
    private readonly record: WalkRecord,
    private readonly battery: WalkBattery,
    private readonly generator: WalkGenerator,
  ) {
    this.hours = new Uint16Array(record.solarKw.length);
    this.burned = new Float64Array(record.solarKw.length);
  }

  /** Hours until it is full again; null where something goes unserved before that, or it takes too long. */
  hoursFrom(start: number): number | null {
    if (this.hours[start] === 0) this.work(start);
    const hours = this.hours[start]!;
    return hours === NONE ? null : hours;
  }

  /** Fuel burned until then. */
  burnedFrom(start: number): number {
    return this.burned[start]!;
  }

  private work(start: number): void {
    const { system, record, battery, generator } = this;
    const { capKwh } = battery;
    const outage = { system, record, start, outageHours: LONGEST_HOURS, startKwh: capKwh };
    const walked = walkBatteryGenerator(outage, battery, generator, {
      fuel: PLENTY,
      untilFullFrom: 23 - (start % 24),
    });
    const full = walked.failure === null && walked.left.chargeKwh >= capKwh - FULL_WITHIN_KWH;
    this.hours[start] = full ? walked.hoursServed : NONE;
    this.burned[start] = PLENTY - walked.left.fuel;
  }
}
