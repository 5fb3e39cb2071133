import { describe, expect, test } from 'vitest';
import { monthDays, yearDays } from '../../src/bill/tariff/bill-days';
import { sumLines } from '../../src/bill/tariff/bill-line';
import { billYear } from '../../src/bill/tariff/bill-year';
import type { Tariff } from '../../src/bill/tariff/tariff';

const clock: Tariff = {
  name: 'two prices',
  fixed: { perMonth: 10 },
  seasons: [
    {
      name: 'all year',
      from: '01-01',
      to: '12-31',
      periods: [
        { name: 'peak', price: 0.4, hours: [[16, 21]] },
        { name: 'rest', price: 0.1 },
      ],
    },
  ],
  export: { rule: 'net-metering', netting: 'by-period', trueUpMonth: 12, trueUpPrice: 0.04 },
  creditFloor: 'fixed',
};

/** Sends out 2 kWh an hour of the peak from April on, takes 1 kWh at 3 am from October on. */
function totalOf(trueUpMonth: number, trueUpPrice: number) {
  const days = yearDays(2026);
  const [importKwh, exportKwh] = [new Float64Array(8760), new Float64Array(8760)];
  days.forEach(({ month }, d) => {
    if (month >= 4 && month <= 9) exportKwh.fill(2, 24 * d + 16, 24 * d + 21);
    if (month >= 10 || month <= 3) importKwh[24 * d + 3] = 1;
  });
  const tariff = {
    ...clock,
    export: { ...clock.export, trueUpMonth, trueUpPrice } as Tariff['export'],
  };
  return billYear({ tariff, days, importKwh, exportKwh });
}

describe('net metering by period', () => {
  const sent = 183 * 10;
  const [winter, fall] = [90, 92];

  // By hand: each month pays $10; January to March 90 kWh at 10 cents; fall is paid by the summer's credit.
  test('pays the kWh left over of the year at the true-up price, and lets the dollars go', () => {
    const none = totalOf(12, 0);
    expect(none.total).toBeCloseTo(120 + 9, 6);
    expect(none.carry.creditDollars).toBeCloseTo(0, 9);
    const paid = totalOf(12, 0.04);
    // What is paid cannot go below the fixed charge and is carried.
    expect(paid.total).toBeCloseTo(129, 6);
    expect(paid.carry.creditDollars).toBeCloseTo(0.04 * (sent - winter - fall), 6);
  });

  test('the month decides: settled in September, the fall is paid by the true-up alone', () => {
    const year = totalOf(9, 0);
    expect(year.total).toBeCloseTo(120 + 9 + 9.2, 6);
    expect(totalOf(9, 0.04).total).toBeCloseTo(129, 6);
  });
});

describe('the least bill', () => {
  const flat: Tariff = {
    name: 'flat',
    fixed: {},
    seasons: [{ ...clock.seasons[0]!, periods: [{ name: 'all hours', price: 0.1 }] }],
    taxes: [{ name: 'Tax', share: 0.1, on: 'charges' }],
    minimumBill: 25,
    export: { rule: 'none' },
  };
  const billed = (tariff: Tariff) => {
    const days = monthDays(2026, 4);
    const importKwh = new Float64Array(720).fill(100 / 720);
    return billYear({ tariff, days, importKwh, exportKwh: new Float64Array(720) }).months[0]!;
  };

  test('holds before tax, with the tax on top, and the bill says so', () => {
    const bill = billed(flat);
    expect(bill.total).toBeCloseTo(25 * 1.1, 9);
    expect(sumLines(bill.lines, 'tax')).toBeCloseTo(2.5, 9);
    expect(bill.lines.find(({ kind }) => kind === 'minimum')!.is.code).toBe('minimum-before-tax');
  });

  test('or with the tax in it, where the tariff says so', () => {
    const bill = billed({ ...flat, minimumBillTax: 'after' });
    expect(bill.total).toBeCloseTo(25, 9);
    expect(bill.lines.find(({ kind }) => kind === 'minimum')!.is.code).toBe('minimum-with-tax');
  });
});
