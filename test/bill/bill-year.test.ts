import { expect, test } from 'vitest';
import { monthDays, yearDays } from '../../src/bill/tariff/bill-days';
import { sumLines } from '../../src/bill/tariff/bill-line';
import { billYear } from '../../src/bill/tariff/bill-year';
import type { Tariff } from '../../src/bill/tariff/tariff';
import { sayBillLine } from '../../src/words/en/money/say-bill-line';

const flat: Tariff = {
  name: 'flat',
  fixed: { perMonth: 10 },
  seasons: [
    { name: 'all', from: '01-01', to: '12-31', periods: [{ name: 'all hours', price: 0.2 }] },
  ],
  export: { rule: 'none' },
};
const useEach = (days: { length: number }, kwh: number) =>
  new Float64Array(days.length * 24).fill(kwh);
const bill = (tariff: Tariff, days: ReturnType<typeof yearDays>, kwh = 1, out = 0) =>
  billYear({ tariff, days, importKwh: useEach(days, kwh), exportKwh: useEach(days, out) });

test('a year has twelve bills and every bill is the sum of its lines', () => {
  const year = bill(flat, yearDays(2026));
  expect(year.months.map((m) => m.month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  expect(year.total).toBeCloseTo(12 * 10 + 8760 * 0.2, 6);
  for (const month of year.months) expect(month.total).toBe(sumLines(month.lines));
});

test('tiers are prorated by the days of the month when the tariff says so', () => {
  const seasons = [
    {
      ...flat.seasons[0]!,
      periods: [{ name: 'all hours', price: 0 }],
      tiers: [{ upToKwh: 300, price: 0.1 }, { price: 0.3 }],
    },
  ];
  const tiered: Tariff = { ...flat, seasons, tierBasis: 'month' };
  const days = monthDays(2026, 1);
  expect(bill(tiered, days).total).toBeCloseTo(10 + 300 * 0.1 + (744 - 300) * 0.3, 9);
  const first = 300 * (31 / 30);
  const prorated = bill({ ...tiered, tierProrateDays: 30 }, days).total;
  expect(prorated).toBeCloseTo(10 + first * 0.1 + (744 - first) * 0.3, 9);
});

test('a season that changes inside the month splits tier and baseline by days', () => {
  const season = { ...flat.seasons[0]!, baselineKwhPerDay: 10 };
  const seasons = [
    { ...season, name: 'spring', from: '01-01', to: '06-10' },
    { ...season, name: 'summer', from: '06-11', to: '12-31', baselineKwhPerDay: 20 },
  ];
  const june = bill({ ...flat, seasons, baselineCredit: 0.05 }, monthDays(2026, 6));
  expect(sumLines(june.months[0]!.lines, 'baseline')).toBeCloseTo(-0.05 * (10 * 10 + 20 * 20), 9);
});

test('a ratchet holds the billed peak up after a high month', () => {
  const prices = [{ from: '01-01', to: '12-31', perKw: 10 }];
  const ratchet = { share: 0.8, months: 11 };
  const tariff: Tariff = {
    ...flat,
    demand: [{ name: 'peak', windowMinutes: 60, prices, ratchet }],
  };
  const days = yearDays(2026);
  const importKwh = useEach(days, 1);
  importKwh[100] = 10;
  const year = billYear({ tariff, days, importKwh, exportKwh: useEach(days, 0) });
  const kw = year.months.map((m) => m.lines.find((l) => l.kind === 'demand')!.quantity);
  expect(kw[0]).toBe(10);
  expect(kw.slice(1)).toEqual(Array(11).fill(8));
});

test('a window shorter than an hour takes the factor given, and says where there is none', () => {
  const prices = [{ from: '01-01', to: '12-31', perKw: 10 }];
  const days = monthDays(2026, 3);
  const peak = (windowMinutes: 15 | 60, factor: number | null) => {
    const tariff: Tariff = { ...flat, demand: [{ name: 'peak', windowMinutes, prices }] };
    const hours = { importKwh: useEach(days, 2), exportKwh: useEach(days, 0) };
    const month = billYear({ tariff, days, ...hours, peakFactors: [factor] }).months[0]!;
    return month.lines.find((l) => l.kind === 'demand')!;
  };
  expect(peak(15, 1.3).quantity).toBeCloseTo(2.6, 9);
  expect(sayBillLine(peak(15, 1.3).is)).toContain('highest hour x 1.30');
  expect(peak(15, null).quantity).toBe(2);
  expect(sayBillLine(peak(15, null).is)).toContain('not known and may be higher');
  expect(sayBillLine(peak(60, null).is)).toBe('Demand, peak');
});

test('holidays named by the tariff are charged as weekend days', () => {
  const periods = [
    { name: 'peak', price: 1, days: 'weekdays' as const, hours: [[0, 24]] as [number, number][] },
    { name: 'rest', price: 0 },
  ];
  const seasons = [{ ...flat.seasons[0]!, periods }];
  const days = monthDays(2026, 11);
  const weekdays = days.filter((d) => d.weekday > 0 && d.weekday < 6).length;
  expect(bill({ ...flat, seasons }, days).total).toBeCloseTo(10 + weekdays * 24, 9);
  const holidays = ['thanksgiving', 'veterans-day'];
  expect(bill({ ...flat, seasons, holidays }, days).total).toBeCloseTo(10 + (weekdays - 2) * 24, 9);
});

test('riders and taxes stand on the base they name', () => {
  const tariff: Tariff = {
    ...flat,
    riders: [
      { name: 'fuel', perKwh: 0.01 },
      { name: 'fund', shareOfEnergy: 0.05 },
    ],
    taxes: [{ name: 'city', share: 0.1, on: 'charges' }],
  };
  const days = monthDays(2026, 4);
  const energy = 720 * 0.2;
  const charges = 10 + energy + 720 * 0.01 + 0.05 * energy;
  expect(bill(tariff, days).total).toBeCloseTo(1.1 * charges, 9);
});

test('a negative price lowers the bill and the minimum bill holds it up', () => {
  const seasons = [{ ...flat.seasons[0]!, periods: [{ name: 'all hours', price: -0.05 }] }];
  const days = monthDays(2026, 4);
  expect(bill({ ...flat, seasons }, days).total).toBeCloseTo(10 - 720 * 0.05, 9);
  expect(bill({ ...flat, seasons, minimumBill: 5 }, days).total).toBeCloseTo(5, 9);
});

test('export credit cannot pay the fixed charge and is carried in dollars', () => {
  const seasons = [{ ...flat.seasons[0]!, periods: [{ name: 'all hours', price: 0.1 }] }];
  const tariff: Tariff = {
    ...flat,
    export: { rule: 'net-billing', seasons },
    creditFloor: 'fixed',
  };
  const days = yearDays(2026).slice(0, 59);
  const exportKwh = new Float64Array(59 * 24);
  exportKwh.fill(2, 0, 31 * 24);
  const importKwh = new Float64Array(59 * 24);
  importKwh.fill(1, 31 * 24);
  const year = billYear({ tariff, days, importKwh, exportKwh });
  expect(year.months[0]!.total).toBeCloseTo(10, 9);
  expect(year.months[0]!.carry.creditDollars).toBeCloseTo(744 * 2 * 0.1, 9);
  expect(year.months[1]!.total).toBeCloseTo(10, 9);
});

test('net metering by period turns what is left over into dollars at the price of that period', () => {
  const periods = [
    { name: 'peak', price: 0.4, hours: [[16, 21]] as [number, number][] },
    { name: 'rest', price: 0.1 },
  ];
  const rule = {
    rule: 'net-metering',
    netting: 'by-period',
    trueUpMonth: 12,
    trueUpPrice: 0,
  } as const;
  const tariff: Tariff = { ...flat, seasons: [{ ...flat.seasons[0]!, periods }], export: rule };
  const days = monthDays(2026, 4);
  const night = Float64Array.from({ length: 720 }, (_, h) => (h % 24 < 16 ? 1 : 0));
  const evening = Float64Array.from({ length: 720 }, (_, h) => (h % 24 === 17 ? 1 : 0));
  const year = billYear({ tariff, days, importKwh: night, exportKwh: evening });
  expect(year.total).toBeCloseTo(10 + 30 * 16 * 0.1 - 30 * 0.4, 9);
});

test('hours that do not fit the days are refused', () => {
  const days = monthDays(2026, 4);
  expect(() =>
    billYear({ tariff: flat, days, importKwh: useEach(days, 1), exportKwh: [] }),
  ).toThrow(RangeError);
});
