// See money/dispatch-rows.ts for where the optima come from. Tolerance 1e-4 dollars: printed to four digits.
import { expect, test } from 'vitest';
import { cyclicOptimum } from '../../src/bill/cyclic-optimum';
import { dispatchRows } from './money/dispatch-rows';

for (const row of dispatchRows.filter((r) => !r.demand)) {
  test(`${row.name}: the optimum of the day costs ${row.optimum} dollars`, () => {
    expect(cyclicOptimum(row.problem)!.cost).toBeCloseTo(row.optimum, 4);
  });
}
