import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { amountOptimum } from '../../src/bill/dispatch/amount-optimum';
import { amountCost, amountSteps } from '../../src/bill/dispatch/amount-steps';
import { optimum } from '../../src/bill/dispatch/optimum';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { dispatchProgram } from '../fixtures/dispatch-program';
import { randomProblem, seeded } from '../fixtures/random-problem';

test('a baseline credit is a first step that is cheaper by the credit', () => {
  const tariff = demoTariff('C');
  const steps = amountSteps(tariff, { season: tariff.seasons[0]!, days: 30, monthDays: 30 });
  expect(steps).toEqual([
    { toKwh: 330, added: -0.09 },
    { toKwh: Number.POSITIVE_INFINITY, added: 0 },
  ]);
  expect(amountCost(steps, 400)).toBeCloseTo(-0.09 * 330, 9);
});

// Against HiGHS: each step is a column of its own, bounded by its length, and the steps add up to the import.
test('15 random fortnights with rising steps cost the same as the general solver finds', async () => {
  const highs = await loadHighs();
  const random = seeded(23);
  const where = { inside: 0, corner: 0 };
  for (let run = 0; run < 15; run++) {
    const drawn = randomProblem(random, { hours: 14 * 24, prices: 'ordinary' });
    // Export below the cheapest step, or a linear program would import and export at once to earn the step's credit.
    const exportPrice = Float64Array.from(drawn.importPrice, (p) => 0.5 * (p - 0.04));
    const problem = { ...drawn, exportPrice };
    const startKwh = problem.floorKwh[0]!;
    const total = problem.loadKwh.length * 1.5;
    const steps = [
      { toKwh: total * (0.2 + 0.6 * random()), added: -0.04 },
      { toKwh: total * (0.8 + 0.4 * random()), added: 0.02 },
      { toKwh: Number.POSITIVE_INFINITY, added: 0.3 },
    ];
    const ours = amountOptimum(problem, steps, (p) => optimum(p, { startKwh }))!;
    const kwh = ours.dispatch.importKwh.reduce((a, b) => a + b, 0);
    where[steps.some((s) => Math.abs(kwh - s.toKwh) < 1e-6) ? 'corner' : 'inside']++;

    const program = dispatchProgram(highs, problem, { startKwh });
    const model = highs.createModel(program);
    model.options.set('output_flag', false);
    const first = program.numCols;
    let from = 0;
    for (const step of steps) {
      const long = Number.isFinite(step.toKwh) ? step.toKwh - from : highs.infinity;
      model.addCol(step.added, 0, long, { indices: [], values: [] });
      from = step.toKwh;
    }
    const imports = Array.from({ length: problem.loadKwh.length }, (_, h) => h * 8);
    const indices = [...imports, first, first + 1, first + 2];
    const values = [...imports.map(() => 1), -1, -1, -1];
    model.addRow(0, 0, { indices, values });
    model.run();
    const theirs = model.getObjectiveValue();
    model.dispose();
    expect(ours.cost, `run ${run}`).toBeCloseTo(theirs, 5);
  }
  // Both sorts of optimum were met: within a step, and at the corner between two.
  expect(where.inside).toBeGreaterThan(0);
  expect(where.corner).toBeGreaterThan(0);
});
