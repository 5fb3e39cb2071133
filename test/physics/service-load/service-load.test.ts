import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cookingDemandVa } from '../../../src/physics/service-load/cooking-demand';
import type { DwellingLoads } from '../../../src/physics/service-load/dwelling';
import { lightingDemandLines } from '../../../src/physics/service-load/general-load';
import { existingServiceLoad } from '../../../src/physics/service-load/optional-existing';
import { optionalNewServiceLoad } from '../../../src/physics/service-load/optional-new';
import { serviceVerdict } from '../../../src/physics/service-load/service-verdict';
import { standardServiceLoad } from '../../../src/physics/service-load/standard';
import { cookingDemand } from '../../../src/tables/electrical/cooking-demand';
import { serviceLoadRulesOf } from '../../../src/tables/electrical/service-load-rules';

const rules = serviceLoadRulesOf(2023)!;
const bare: DwellingLoads = {
  floorAreaFt2: 1200,
  smallApplianceCircuits: 2,
  laundryCircuits: 1,
  cooking: [],
  dryerVa: null,
  appliances: [],
  chargers: [],
  heatingCooling: {},
  volts: 240,
};
const standard = (home: DwellingLoads) => standardServiceLoad(home, rules, cookingDemand.rows);

describe('the standard method', () => {
  test('counts a small dryer as 5000 VA and a small charger as 7200 VA (2023)', () => {
    const more = { ...bare, dryerVa: 4200, chargers: [{ name: 'Car charger', va: 3800 }] };
    expect(standard(more).totalVa - standard(bare).totalVa).toBe(5000 + 7200);
    const in2017 = standardServiceLoad(more, serviceLoadRulesOf(2017)!, cookingDemand.rows);
    expect(in2017.totalVa - standard(bare).totalVa).toBe(5000 + 3800);
  });

  test('takes four fixed appliances at 75 % and three whole', () => {
    const four = ['heater', 'dishwasher', 'disposer', 'well'].map((name) => ({ name, va: 1000 }));
    expect(standard({ ...bare, appliances: four }).totalVa - standard(bare).totalVa).toBe(3000);
    const three = four.slice(1);
    expect(standard({ ...bare, appliances: three }).totalVa - standard(bare).totalVa).toBe(3000);
  });

  test('adds a quarter of the largest motor', () => {
    const load = standardServiceLoad({ ...bare, otherMotorVa: 2000 }, rules, cookingDemand.rows);
    expect(load.totalVa - standard(bare).totalVa).toBe(500);
  });

  // NEC 220.50 and 430.24: the largest motor at 125 %, also where it is the compressor that cools or heats.
  test('adds the quarter of the compressor where that is the largest motor', () => {
    const with_ = (heatingCooling: DwellingLoads['heatingCooling'], otherMotorVa = 1500) =>
      standardServiceLoad({ ...bare, heatingCooling, otherMotorVa }, rules, cookingDemand.rows)
        .totalVa - standard(bare).totalVa;
    expect(with_({ coolingVa: 5760 })).toBe(5760 * 1.25);
    expect(with_({ heatPumpVa: 5760, supplementalVa: 10_000 })).toBe(5760 * 1.25 + 10_000);
    expect(with_({ coolingVa: 1200 })).toBe(1200 + 0.25 * 1500);
    // Six units of 1,680 VA: the largest motor is one of them.
    expect(with_({ coolingVa: 10_080, coolingMotorVa: 1680 })).toBe(10_080 + 0.25 * 1680);
    // Kept apart, the strips run without the compressor; from 2020 on it still counts as a motor left out (220.60).
    const apart = { heatPumpVa: 5760, supplementalVa: 10_000, supplementalWithCompressor: false };
    expect(with_(apart, 0)).toBe(10_000 + 0.25 * 5760);
  });

  test('weighs heating against cooling with the motor in, and from 2020 on counts a motor that is left out', () => {
    const total = (edition: 2017 | 2023, heatingCooling: DwellingLoads['heatingCooling']) => {
      const of = serviceLoadRulesOf(edition)!;
      const sum = (home: DwellingLoads) =>
        standardServiceLoad(home, of, cookingDemand.rows).totalVa;
      return sum({ ...bare, heatingCooling }) - sum(bare);
    };
    // 125 % of 5,760 is 7,200, more than 6,000 of heat.
    expect(total(2017, { coolingVa: 5760, spaceHeatVa: 6000 })).toBe(7200);
    expect(total(2017, { coolingVa: 5760, spaceHeatVa: 10_000 })).toBe(10_000);
    expect(total(2023, { coolingVa: 5760, spaceHeatVa: 10_000 })).toBe(10_000 + 0.25 * 5760);
  });

  test('brings down only what is fastened in place and of 500 W or more (220.53)', () => {
    const of = (name: string, va: number, fastened?: boolean) => ({ name, va, fastened });
    const large = ['heater', 'dishwasher', 'disposer'].map((name) => of(name, 1000));
    const more = (extra: ReturnType<typeof of>) =>
      standard({ ...bare, appliances: [...large, extra] }).totalVa - standard(bare).totalVa;
    expect(more(of('bath fan', 60))).toBe(3060);
    expect(more(of('sump pump, plugged in', 1000, false))).toBe(4000);
    expect(more(of('well', 1000))).toBe(3000);
  });

  test('takes what is above 120 kVA of general load at 25 %', () => {
    const va = lightingDemandLines(130_000, rules).map((line) => line.va);
    expect(va).toEqual([3000, 117_000 * 0.35, 10_000 * 0.25]);
  });
});

test.each([
  [[12_000], 8000],
  [[13_400], 8400],
  [[13_500], 8800],
  [[3000], 2400],
  [[4000, 4000], 5200],
  [[12_000, 12_000], 11_000],
  [[12_000, 4000], 11_000],
  [[16_000, 12_000], 11_000 * 1.1],
  [[14_000, 4000], 8800 + 3200],
  [[3000, 4000], 2400 + 3200],
  [[1500], 1500],
  [[1500, 12_000], 8000 + 1500],
  [[30_000], 30_000],
  [[], 0],
])('cooking of %j VA counts as %i VA', (units, va) => {
  const cooking = units.map((unit, i) => ({ name: `unit ${i}`, va: unit }));
  expect(cookingDemandVa(cooking, cookingDemand.rows).va).toBeCloseTo(va, 9);
});

test('a service is called enough only at 80 % or less both ways', () => {
  const at = (plainAmps: number, carefulAmps: number) =>
    serviceVerdict({ plainAmps, carefulAmps, ratingAmps: 100 });
  expect(at(80, 80)).toBe('within');
  expect(at(80, 81)).toBe('marginal');
  expect(at(100, 125)).toBe('marginal');
  expect(at(100.1, 100.1)).toBe('over');
});

test('more load never lowers any of the three methods', () => {
  const va = fc.integer({ min: 0, max: 20_000 });
  fc.assert(
    fc.property(fc.integer({ min: 300, max: 6000 }), va, va, va, (ft2, dryer, more, cool) => {
      const home = {
        ...bare,
        floorAreaFt2: ft2,
        dryerVa: dryer,
        heatingCooling: { coolingVa: cool },
      };
      const larger = { ...home, chargers: [{ name: 'Car charger', va: more }] };
      expect(standard(larger).totalVa).toBeGreaterThanOrEqual(standard(home).totalVa);
      expect(optionalNewServiceLoad(larger, rules).totalVa).toBeGreaterThanOrEqual(
        optionalNewServiceLoad(home, rules).totalVa,
      );
      const existing = (h: DwellingLoads) =>
        existingServiceLoad({ ...h, addsHeatingOrCooling: false }, rules);
      expect(existing(larger).totalVa).toBeGreaterThanOrEqual(existing(home).totalVa);
      expect(existing(home).lenientVa ?? 0).toBeLessThanOrEqual(existing(home).totalVa);
    }),
    { seed: 20261125 },
  );
});

test('too few kitchen circuits or no floor area is our own bug', () => {
  expect(() => standard({ ...bare, smallApplianceCircuits: 1 })).toThrow(/smallApplianceCircuits/);
  expect(() => standard({ ...bare, floorAreaFt2: 0 })).toThrow(RangeError);
});
