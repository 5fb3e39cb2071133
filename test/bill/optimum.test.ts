import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cyclicOptimum } from '../../src/bill/dispatch/cyclic-optimum';
import { dayAheadRule } from '../../src/bill/dispatch/day-ahead-rule';
import type { DispatchProblem } from '../../src/bill/dispatch/dispatch-problem';
import { settingOfYear } from '../../src/bill/dispatch/dispatch-year';
import { followCharge } from '../../src/bill/dispatch/follow-charge';
import { optimum, valueFunctions } from '../../src/bill/dispatch/optimum';
import { runRule } from '../../src/bill/dispatch/rule';
import { selfUseRule } from '../../src/bill/dispatch/self-use-rule';
import { demoSetting } from '../bench/bench-dispatch';
import { randomProblem, seeded } from '../fixtures/random-problem';

const day = (seed: number, prices: 'ordinary' | 'negative' = 'ordinary') =>
  randomProblem(seeded(seed), { hours: 24, prices });

describe('the optimum of a day', () => {
  test('costs no more than resting and no more than any rule', () => {
    const seeds = fc.integer({ min: 0, max: 1e9 });
    const kinds = fc.constantFrom('ordinary' as const, 'negative' as const);
    fc.assert(
      fc.property(seeds, kinds, (seed, prices) => {
        const problem = day(seed, prices);
        const startKwh = problem.floorKwh[0]!;
        const best = optimum(problem, { startKwh })!.cost;
        expect(best).toBeLessThanOrEqual(followCharge(problem, startKwh, () => 0).cost + 1e-9);
        expect(best).toBeLessThanOrEqual(
          runRule(problem, selfUseRule(problem), startKwh).cost + 1e-9,
        );
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test('a larger battery never costs more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), (seed) => {
        const problem = day(seed);
        const larger = { ...problem.battery, usableKwh: problem.battery.usableKwh + 3 };
        const startKwh = problem.floorKwh[0]!;
        const one = optimum(problem, { startKwh })!.cost;
        expect(optimum({ ...problem, battery: larger }, { startKwh })!.cost).toBeLessThanOrEqual(
          one + 1e-9,
        );
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  test('of a battery with no room is the house by itself', () => {
    const problem = day(4);
    const battery = { ...problem.battery, usableKwh: 0 };
    const empty = { ...problem, battery, floorKwh: new Float64Array(25) };
    const idle = followCharge(empty, 0, () => 0).cost;
    expect(optimum(empty, { startKwh: 0 })!.cost).toBeCloseTo(idle, 9);
    expect(cyclicOptimum(empty)!.cost).toBeCloseTo(idle, 9);
  });
});

describe('what cannot be is null, and what cannot be meant is refused', () => {
  const problem: DispatchProblem = {
    ...day(4),
    gridMayCharge: false,
    solarKwh: new Float64Array(24),
  };
  test('an end that cannot be reached without sun', () => {
    const startKwh = problem.floorKwh[0]!;
    expect(optimum(problem, { startKwh, endKwh: startKwh + 1 })).toBeNull();
  });
  test('a start below the floor', () => {
    const floorKwh = new Float64Array(25).fill(1);
    expect(optimum({ ...problem, floorKwh }, { startKwh: 0 })).toBeNull();
  });
  test('an import limit no discharge can hold', () => {
    const peak = { kw: new Float64Array(24).fill(0), perKwh: Number.POSITIVE_INFINITY };
    expect(optimum({ ...problem, peak }, { startKwh: problem.floorKwh[0]! })).toBeNull();
  });
  test('lists that do not agree, and an efficiency over 1', () => {
    expect(() => optimum({ ...problem, solarKwh: [1] }, { startKwh: 0 })).toThrow(RangeError);
    const battery = { ...problem.battery, chargeEfficiency: 1.1 };
    expect(() => optimum({ ...problem, battery }, { startKwh: 0 })).toThrow(RangeError);
  });
});

test('a year in which evening export is worth more than import stays exact and small', () => {
  const { input } = demoSetting('B');
  const credit = Array.from({ length: 24 }, (_, hour) => (hour === 18 ? 0.6 : 0.05));
  const prices = Array.from({ length: 12 }, () => credit);
  const tariff = { ...input.tariff, export: { rule: 'hourly-credit' as const, prices } };
  const { problem } = settingOfYear({ ...input, tariff });
  const startKwh = problem.floorKwh[0]!;
  const values = valueFunctions(problem)!;
  // The cost carried back through every hour is the cost of playing the year forward.
  const { cost } = optimum(problem, { startKwh })!;
  expect(Math.abs(values.costAt(0, startKwh) - cost)).toBeLessThan(1e-6);
  expect(cost).toBeLessThan(runRule(problem, dayAheadRule(problem), startKwh).cost);
  // Rounding must not breed pieces from hour to hour.
  expect(Math.max(...values.pieces)).toBeLessThan(60);
});
