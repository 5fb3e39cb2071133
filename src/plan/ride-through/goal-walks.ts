import { sampledStarts } from '../../advice/ride/sampled-starts';
import type { Walkable } from '../../advice/ride/walkable';
import { monthOfHour } from '../../outage/month-of-hour';
import { manyWalks } from '../../outage/walk/many-walks';
import { type Walked, walkOutage } from '../../outage/walk/walk';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { LENGTHS } from './lengths';
import type { BadCase, BadCaseHour } from './ride-through';

/** Outages of the goal's length that start in the season, each walked to its end. */
export interface GoalWalks {
  /** Means of the hours not fully served and of the energy gone without, kWh at the house. */
  readonly unservedHours: number;
  readonly unservedKwh: number;
}

export function goalWalks(way: Walkable, goalHours: number): GoalWalks {
  const { system, record, startKwh, months } = way;
  const walk = manyWalks(system, record);
  const walks = sampledStarts(record.solarKw.length, months).map((start) => {
    const outage = { start, outageHours: goalHours, startKwh };
    const served = walk(outage);
    return served.failure === null ? served : walkOutage({ system, record, ...outage });
  });
  const mean = (of: (walk: Walked) => number) =>
    walks.reduce((sum, one) => sum + of(one), 0) / Math.max(1, walks.length);
  return { unservedHours: mean((w) => w.unservedHours), unservedKwh: mean((w) => w.unservedKwh) };
}

/** The outage hour by hour, for a picture: at most two weeks of it. */
export function hourByHour(way: Walkable, goalHours: number, start: number): BadCase {
  const { system, record, startKwh } = way;
  const hours: BadCaseHour[] = [];
  const outageHours = Math.min(goalHours, LENGTHS.at(-1)!);
  const { failure, hoursServed } = walkOutage({
    system,
    record,
    start,
    outageHours,
    startKwh,
    onHour: ({ hours: hour, wantedKwh, unservedKwh, chargeKwh, fuel }) =>
      hours.push({
        hour,
        loadKw: wantedKwh,
        // What an idle inverter misses is not wanted by the house.
        servedKw: Math.max(0, wantedKwh - unservedKwh),
        sunKw: record.solarKw[(start + hour) % record.solarKw.length]!,
        chargeKwh,
        fuelLeft: system.generator === null || !Number.isFinite(fuel) ? null : fuel,
      }),
  });
  return {
    month: monthOfHour(start % HOURS_PER_YEAR),
    hourOfDay: start % 24,
    hours,
    endsAfter: failure === null ? null : hoursServed,
  };
}
