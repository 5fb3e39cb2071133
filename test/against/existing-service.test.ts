import { describe, expect, test } from 'vitest';
import type { DwellingLoads } from '../../src/physics/service-load/dwelling';
import {
  type MeteredDemand,
  meteredServiceLoad,
} from '../../src/physics/service-load/metered-demand';
import { existingServiceLoad } from '../../src/physics/service-load/optional-existing';
import { optionalNewServiceLoad } from '../../src/physics/service-load/optional-new';
import {
  serviceLoadRules,
  serviceLoadRulesOf,
} from '../../src/tables/electrical/service-load-rules';

const rules = serviceLoadRulesOf(2020)!;
const home: DwellingLoads = {
  floorAreaFt2: 2000,
  smallApplianceCircuits: 2,
  laundryCircuits: 1,
  cooking: [{ name: 'Range', va: 12_000 }],
  dryerVa: 5000,
  appliances: [{ name: 'Water heater', va: 4500 }],
  chargers: [],
  heatingCooling: {},
  volts: 240,
};

describe('NEC 220.83, existing dwelling', () => {
  test('is 1200 VA below 220.82 for the same general load, 60 % of 2 kVA (trade press on 220.83)', () => {
    const fresh = optionalNewServiceLoad(home, rules);
    const old = existingServiceLoad({ ...home, addsHeatingOrCooling: false }, rules);
    expect(fresh.totalVa - old.totalVa).toBeCloseTo(1200, 9);
  });

  test('takes heating or cooling that is being added whole (220.83(B))', () => {
    const heatingCooling = { coolingVa: 5000, spaceHeatVa: 9000 };
    const before = existingServiceLoad({ ...home, addsHeatingOrCooling: true }, rules);
    const after = existingServiceLoad(
      { ...home, heatingCooling, addsHeatingOrCooling: true },
      rules,
    );
    expect(after.totalVa - before.totalVa).toBeCloseTo(9000, 9);
    expect(after.lenientVa).toBeNull();
  });

  test('counts fewer than four room heaters whole and four or more with the other loads (220.83(B))', () => {
    const with_ = (spaceHeatControls: number, coolingVa = 0) =>
      existingServiceLoad(
        {
          ...home,
          heatingCooling: { spaceHeatVa: 9000, spaceHeatControls, coolingVa },
          addsHeatingOrCooling: true,
        },
        rules,
      ).totalVa - existingServiceLoad({ ...home, addsHeatingOrCooling: true }, rules).totalVa;
    expect(with_(3)).toBeCloseTo(9000, 9);
    expect(with_(4)).toBeCloseTo(0.4 * 9000, 9);
    // Of the two that are not on together the one with which the sum is larger.
    expect(with_(4, 5000)).toBeCloseTo(5000, 9);
  });

  test('shows both readings of existing heating and cooling and takes the higher (220.83(A), disputed)', () => {
    const heatingCooling = { coolingVa: 5000 };
    const load = existingServiceLoad(
      { ...home, heatingCooling, addsHeatingOrCooling: false },
      rules,
    );
    expect(load.totalVa - load.lenientVa!).toBeCloseTo(0.6 * 5000, 9);
    expect(load.notes).toHaveLength(1);
  });
});

const year = {
  intervalMinutes: 15,
  days: 365,
  hasSolarOrPeakShaving: false,
  newLoadVa: 48 * 240,
  newLoadContinuous: true,
  volts: 240,
  ratingAmps: 100,
} satisfies Partial<MeteredDemand>;

describe('NEC 220.87, metered demand', () => {
  test('adds 125 % of the peak and the new load: 9.6 kVA and 48 A make 98.0 A on 240 V', () => {
    const result = meteredServiceLoad({ ...year, peakVa: 9600 });
    if (result.kind === 'refused') throw new Error(result.reason);
    expect(result.load.totalVa).toBeCloseTo(12_000 + 11_520, 9);
    expect(result.load.amps).toBeCloseTo(98.0, 9);
  });

  test('is only marginal there, for the charger counted at 125 % makes it 110 A', () => {
    const result = meteredServiceLoad({ ...year, peakVa: 9600 });
    if (result.kind === 'refused') throw new Error(result.reason);
    expect(result.carefulAmps).toBeCloseTo((12_000 + 14_400) / 240, 9);
    expect(result.verdict).toBe('marginal');
  });

  test('is over a 100 A service at a peak of 10.0 kVA: 24.02 kVA, 100.1 A', () => {
    const result = meteredServiceLoad({ ...year, peakVa: 10_000 });
    if (result.kind === 'refused') throw new Error(result.reason);
    expect(result.load.amps).toBeCloseTo(24_020 / 240, 9);
    expect(result.verdict).toBe('over');
  });

  test('is within a 200 A service', () => {
    expect(meteredServiceLoad({ ...year, peakVa: 9600, ratingAmps: 200 })).toMatchObject({
      verdict: 'within',
    });
  });

  test.each([
    ['solar on the roof', { hasSolarOrPeakShaving: true }],
    ['solar not known', { hasSolarOrPeakShaving: null }],
    ['only 20 days', { days: 20 }],
    ['half a year of hourly readings', { days: 180, intervalMinutes: 60 }],
  ])('is refused with %s', (_why, part) => {
    expect(meteredServiceLoad({ ...year, peakVa: 5000, ...part }).kind).toBe('refused');
  });

  test('never gets better than marginal on a 30-day record or on hourly readings', () => {
    for (const part of [{ days: 31 }, { intervalMinutes: 60 }]) {
      const result = meteredServiceLoad({ ...year, peakVa: 5000, ratingAmps: 400, ...part });
      expect(result).toMatchObject({ verdict: 'marginal' });
    }
  });
});

test('the 2026 edition counts 2 VA/ft2 and its other numbers are said to be missing', () => {
  expect(serviceLoadRules.rows.find((row) => row.edition === 2026)!.vaPerFt2).toBe(2);
  expect(serviceLoadRulesOf(2026)).toBeNull();
});
