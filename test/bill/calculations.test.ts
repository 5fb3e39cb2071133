import { expect, test } from 'vitest';
import { billOfMonth, dispatchOfYear, reserveOfYear } from '../../src/bill/calculations';
import { demoTariff } from '../../src/bill/demo-tariffs';

const quick = {
  tariff: demoTariff('B'),
  kwhPerYear: 10_791,
  usableKwh: 10,
  kw: 5,
  roundTripEfficiency: 0.9025,
  wearPerKwh: 0,
  year: 2026,
};

test('a flat bill is the fixed charge and the kWh', () => {
  const bill = billOfMonth({ tariff: demoTariff('A'), kwh: 899, month: 4, year: 2026 });
  expect(bill.total).toBeCloseTo(12 + 899 * 0.165, 9);
});

test('a full battery a day under tariff B saves no more than its size allows', () => {
  const { rule, ceiling } = dispatchOfYear({ ...quick, keptShare: 0 });
  // One full cycle a day: 9.5 kWh out at 0.36, 10 / 0.95 kWh in at 0.15, and never more than the peak hours use.
  const most = 365 * (9.5 * 0.36 - (10 / 0.95) * 0.15);
  expect(ceiling.savings).toBeLessThanOrEqual(most + 2);
  expect(rule.savings).toBeLessThanOrEqual(ceiling.savings + 1e-6);
  expect(rule.savings).toBeGreaterThan(0.95 * ceiling.savings);
});

test('all of it kept for outages saves nothing', () => {
  const levels = reserveOfYear({ ...quick, keptShare: 1 });
  expect(levels.at(-1)).toMatchObject({ share: 1, chosen: true });
  expect(levels.at(-1)!.savings).toBeCloseTo(0, 6);
});
