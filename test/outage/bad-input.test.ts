import { describe, expect, it } from 'vitest';
import { chargeToKeep } from '../../src/outage/charge-to-keep';
import { chargeForEveryStart, neededForEveryStart } from '../../src/outage/every-start';
import { generatorFuelDays } from '../../src/outage/generator-fuel-days';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { netEnergy } from '../../src/outage/net-energy';
import { oddsFromCharge, oddsFromFull } from '../../src/outage/ride-through-odds';
import { batteryRuntime } from '../../src/outage/runtime';
import { WHOLE_YEAR } from '../../src/outage/season';
import { sizeForShareOfOutages, sizeForShareOfYears } from '../../src/outage/size-by-odds';
import { unservedByMonth } from '../../src/outage/unserved-by-month';
import { sampleOutages } from '../../src/outage/walk/sampled-odds';
import { always, generator, vehicle } from './walk/made-up-system';

/** Every number inside a result, however deep. */
function numbersIn(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  if (ArrayBuffer.isView(result)) return [...(result as Float64Array)];
  if (result === null || typeof result !== 'object') return [];
  return Object.values(result).flatMap(numbersIn);
}

const YEAR = 8760;
const kw = (value: number, hours = YEAR) => new Float64Array(hours).fill(value);
const limits = {
  chargeKw: 5,
  dischargeKw: 5,
  chargeEfficiency: 0.92,
  dischargeEfficiency: 0.92,
  idleKw: 0,
};
const none = { ...limits, chargeKw: 0, dischargeKw: 0 };

const homes = {
  'no sun at all': { load: kw(1), sun: kw(0), capKwh: 10, limits },
  'no load at all': { load: kw(0), sun: kw(2), capKwh: 10, limits },
  'no load and no sun': { load: kw(0), sun: kw(0), capKwh: 0, limits },
  'no battery': { load: kw(1), sun: kw(2), capKwh: 0, limits },
  'a battery that may neither charge nor give': {
    load: kw(1),
    sun: kw(0),
    capKwh: 10,
    limits: none,
  },
  'less record than outage': { load: kw(1, 48), sun: kw(0, 48), capKwh: 10, limits },
  'a load of a thousand homes': { load: kw(5000), sun: kw(0), capKwh: 10, limits },
};

describe('homes at the edge', () => {
  for (const [name, home] of Object.entries(homes)) {
    it(`give finite numbers or none with ${name}`, () => {
      const { capKwh } = home;
      const energy = netEnergy({ loadKw: home.load, supplyKw: home.sun, limits: home.limits });
      const { netKwh, overloadKwh } = energy;
      const needed = neededForEveryStart(netKwh, 168);
      const charge = chargeForEveryStart(netKwh, 168, capKwh);
      const survived = hoursSurvived({ netKwh, overloadKwh, capKwh, limitHours: 336 });
      const share = { dischargeEfficiency: 0.92, outageHours: 168 };
      const results = [
        energy,
        needed,
        charge,
        survived,
        oddsFromFull(survived),
        oddsFromCharge({ netKwh, overloadKwh, capKwh, startKwh: capKwh / 2 }),
        chargeToKeep(charge, capKwh),
        unservedByMonth({ netKwh, overloadKwh, capKwh, startKwh: 0, ...share }),
        sizeForShareOfOutages(needed, WHOLE_YEAR, 0.9),
        sizeForShareOfYears(needed, WHOLE_YEAR, 0.9),
        sampleOutages({
          system: {
            battery: { capKwh, limits: home.limits },
            generator: { ...generator, fuelAtStart: 3 },
            vehicle,
            ladder: [{ load: 1, offBelow: 0.5 }],
          },
          record: { loadsKw: [home.load, kw(0, home.load.length)], solarKw: home.sun },
          startKwh: capKwh,
          everyHours: 370,
        }),
        batteryRuntime({
          usableKwh: capKwh,
          loadWattsByHour: home.load.slice(0, 24).map((x) => 1000 * x),
          solarWattsByHour: home.sun.slice(0, 24).map((x) => 1000 * x),
          inverterIdleWatts: 0,
          dischargeEfficiency: 0.92,
        }),
        generatorFuelDays({
          loadWattsByHour: home.load.slice(0, 24).map((x) => 1000 * x),
          ratedKw: 5,
          fuelLine: generator.fuelLine,
          usableFuel: 0,
        }),
      ];
      const bad = results.flatMap(numbersIn).filter((value) => !Number.isFinite(value));
      expect(bad).toEqual([]);
      expect(survived.every((hours) => hours >= 0 && hours <= 336)).toBe(true);
    });
  }

  it('ride through nothing longer than the fuel, and say that the fuel went', () => {
    const system = {
      battery: null,
      generator: { ...generator, runsByHour: always, fuelAtStart: 10 },
      vehicle: null,
      ladder: [],
    };
    const record = { loadsKw: [kw(1)], solarKw: kw(0) };
    const odds = sampleOutages({ system, record, startKwh: 0 });
    // 10 gal at 0.36 gal/h: 27 whole hours
    expect(odds.map((length) => length.all!.share)).toEqual([1, 1, 0, 0, 0]);
    expect(Object.keys(odds[2]!.failures)).toEqual(['fuel-gone']);
    expect(odds[4]!.unserved!.hours).toBe(336 - 27);
  });
});
