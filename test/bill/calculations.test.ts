import { describe, expect, test } from 'vitest';
import { billOfDays, dispatchOfYear, reserveOfYear } from '../../src/bill/calculations';
import { daysBetween, monthDays } from '../../src/bill/tariff/bill-days';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';

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
  const bill = billOfDays({
    tariff: demoTariff('A'),
    kwh: 899,
    days: monthDays(2026, 4),
    meteredKw: null,
  });
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

describe('one bill over the days it covers', () => {
  test('from the 17th to the 16th is one bill with one fixed charge', () => {
    const days = daysBetween('2026-06-17', '2026-07-16')!;
    expect(days.length).toBe(30);
    const bill = billOfDays({ tariff: demoTariff('A'), kwh: 899, days, meteredKw: null });
    expect(bill.total).toBeCloseTo(12 + 899 * 0.165, 6);
  });

  test('a season that ends inside it splits its days: baseline of 11 kWh a day in summer, 10 in winter', () => {
    const days = daysBetween('2026-09-16', '2026-10-15')!;
    const bill = billOfDays({ tariff: demoTariff('C'), kwh: 1500, days, meteredKw: null });
    const baseline = bill.lines.filter(({ kind }) => kind === 'baseline');
    expect(baseline.map(({ quantity }) => quantity)).toEqual([165, 150]);
  });

  test('counts 29 February, and takes no day that is none', () => {
    expect(daysBetween('2028-02-15', '2028-03-14')!.length).toBe(29);
    expect(daysBetween('2026-02-29', '2026-03-14')).toBeNull();
    expect(daysBetween('2026-03-14', '2026-03-01')).toBeNull();
  });

  test('the peak read off the meter is the peak that is billed', () => {
    const days = monthDays(2026, 7);
    const of = { tariff: demoTariff('D'), kwh: 900, days };
    const demand = (meteredKw: number | null) =>
      billOfDays({ ...of, meteredKw }).lines.find(({ kind }) => kind === 'demand')!.dollars;
    expect(demand(6)).toBeCloseTo(6 * 9.5, 6);
    expect(demand(null)).toBeLessThan(6 * 9.5);
  });
});
