// See test/fixtures/dispatch-rows.ts for where the optima come from. Tolerance 1e-4 dollars: printed to four digits.
import { expect, test } from 'vitest';
import { cyclicOptimum } from '../../src/bill/dispatch/cyclic-optimum';
import { peakOptimum } from '../../src/bill/dispatch/peak-optimum';
import { dispatchRows } from '../fixtures/dispatch-rows';

for (const row of dispatchRows.filter((r) => !r.demand)) {
  test(`${row.name}: the optimum of the day costs ${row.optimum} dollars`, () => {
    expect(cyclicOptimum(row.problem)!.cost).toBeCloseTo(row.optimum, 4);
  });
}

const demandRow = dispatchRows.find((r) => r.demand)!;
const counts = Float64Array.from({ length: 24 }, (_, h) => (h >= 15 && h < 20 ? 1 : 0));

test(`${demandRow.name}: a month of 22 such days with a demand charge costs ${demandRow.optimum} dollars`, () => {
  const { perKw, days } = demandRow.demand!;
  const found = peakOptimum(demandRow.problem, { perKw, counts }, cyclicOptimum, days)!;
  expect(found.cost).toBeCloseTo(demandRow.optimum, 4);
  // Import in the window is level at 0.12 kW: 10.1 kWh of load less the 9.5 a full battery gives, over five hours.
  expect(found.peakKw).toBeCloseTo((10.1 - 9.5) / 5, 4);
});
