import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BillLine } from '../../src/bill/tariff/bill-line';
import { paperBill } from '../../src/bill/tariff/paper-bill';
import { sayBill } from '../../src/words/en/money/say-bill';

const line = (dollars: number): BillLine => ({
  kind: 'energy',
  is: { code: 'energy-period', season: null, period: 'all hours' },
  quantity: null,
  unit: null,
  price: null,
  dollars,
});

test('$23.455 less $4.525 is $23.46 less $4.53, which comes to $18.93', () => {
  const printed = paperBill({ lines: [line(23.455), line(-4.525)] });
  expect(printed.lines.map((one) => one.dollars)).toEqual([23.46, -4.53]);
  expect(printed.total).toBe(18.93);
});

test('the lines in text come to the total in text, whatever they are', () => {
  const amounts = fc.array(fc.double({ min: -5000, max: 5000, noNaN: true }), { maxLength: 12 });
  fc.assert(
    fc.property(amounts, (all) => {
      const lines = all.map(line);
      const exact = all.reduce((sum, each) => sum + each, 0);
      const cents = sayBill(paperBill({ lines })).map((text) =>
        Math.round(100 * Number(text.replace(/^[^:]*: /, '').replace('$', ''))),
      );
      const total = cents.pop()!;
      expect(total).toBe(cents.reduce((sum, each) => sum + each, 0));
      expect(Math.abs(total / 100 - exact)).toBeLessThanOrEqual(0.005 * lines.length + 1e-9);
    }),
  );
});
