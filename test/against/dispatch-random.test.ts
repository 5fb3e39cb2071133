// Our optimum against HiGHS (Huangfu & Hall 2018, a general solver for linear and mixed-integer programs) on random
// problems with a fixed seed. Tolerance 1e-6 dollars: the solver's own feasibility tolerance is 1e-7.
import loadHighs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { cyclicOptimum } from '../../src/bill/dispatch/cyclic-optimum';
import { optimum } from '../../src/bill/dispatch/optimum';
import { peakOptimum } from '../../src/bill/dispatch/peak-optimum';
import { dispatchProgram, solveProgram } from '../fixtures/dispatch-program';
import { type PriceSort, randomProblem, seeded } from '../fixtures/random-problem';

let highs: Awaited<ReturnType<typeof loadHighs>>;
beforeAll(async () => {
  highs = await loadHighs();
});

const fixedStart = (days: number, prices: PriceSort, seed: number) => {
  const random = seeded(seed);
  for (let day = 0; day < days; day++) {
    const problem = randomProblem(random, { hours: 24, prices });
    const startKwh =
      problem.floorKwh[0]! + 0.3 * (problem.battery.usableKwh - problem.floorKwh[0]!);
    const ours = optimum(problem, { startKwh })!;
    const options = { startKwh, exclusive: prices !== 'ordinary' };
    const theirs = solveProgram(highs, dispatchProgram(highs, problem, options));
    expect(ours.cost, `day ${day} of seed ${seed}`).toBeCloseTo(theirs.cost, 5);
  }
};

describe('50 random days cost the same as the general solver finds', () => {
  test('ordinary prices, 30 days', () => fixedStart(30, 'ordinary', 20261125));
  test('export worth more than import in some hours, 10 days', () =>
    fixedStart(10, 'dear-export', 7));
  test('negative prices in some hours, 10 days', () => fixedStart(10, 'negative', 11));
});

test('three days in a row with negative prices and dear export cost the same as the general solver finds', () => {
  const random = seeded(29);
  for (const prices of ['negative', 'dear-export'] as const) {
    const problem = randomProblem(random, { hours: 72, prices });
    const startKwh = problem.floorKwh[0]!;
    const theirs = solveProgram(
      highs,
      dispatchProgram(highs, problem, { startKwh, exclusive: true }),
    );
    expect(optimum(problem, { startKwh })!.cost, prices).toBeCloseTo(theirs.cost, 5);
  }
});

test('20 random days that repeat for ever cost the same as the general solver finds', () => {
  const random = seeded(5);
  for (let day = 0; day < 20; day++) {
    const problem = randomProblem(random, { hours: 24, prices: 'ordinary' });
    const theirs = solveProgram(highs, dispatchProgram(highs, problem, { cyclic: true }));
    expect(cyclicOptimum(problem)!.cost, `day ${day}`).toBeCloseTo(theirs.cost, 5);
  }
});

test('a whole year of hours with random prices costs the same as the general solver finds', () => {
  const problem = randomProblem(seeded(3), { hours: 8760, prices: 'ordinary' });
  const startKwh = problem.floorKwh[0]!;
  const theirs = solveProgram(highs, dispatchProgram(highs, problem, { startKwh }));
  const ours = optimum(problem, { startKwh })!;
  // The issue asks for 0.1 %; the method is exact, so the solver's tolerance over 8,760 hours is what remains.
  expect(Math.abs(ours.cost - theirs.cost)).toBeLessThan(1e-6 * Math.abs(theirs.cost));
}, 60_000);

test('20 random fortnights with a demand charge cost the same as the general solver finds', () => {
  const random = seeded(17);
  for (let run = 0; run < 20; run++) {
    const problem = randomProblem(random, { hours: 14 * 24, prices: 'ordinary' });
    const startKwh = problem.floorKwh[0]!;
    const perKw = 2 + 15 * random();
    const allDay = random() < 0.3;
    const counts =
      problem.loadKwh instanceof Float64Array
        ? problem.loadKwh.map((_, h) => (allDay || (h % 24 >= 15 && h % 24 < 20) ? 1 : 0))
        : [];
    const ours = peakOptimum(problem, { perKw, counts }, (p) => optimum(p, { startKwh }))!;
    const program = dispatchProgram(highs, problem, { startKwh, demand: { perKw, counts } });
    const theirs = solveProgram(highs, program);
    // Our search ends when the least possible and the found cost agree to 1e-7 dollars.
    expect(ours.cost, `run ${run}`).toBeCloseTo(theirs.cost, 4);
  }
}, 60_000);
