// Bills of four invented tariffs for an invented house and month, worked out apart from this program
// (numpy, then by hand for tariff B). Tolerance 1e-4 dollars: the figures were printed to four digits.
import { expect, test } from 'vitest';
import { sumLines } from '../../src/bill/tariff/bill-line';
import { billYear } from '../../src/bill/tariff/bill-year';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { paperBill } from '../../src/bill/tariff/paper-bill';
import { demoMonth } from '../fixtures/demo-month';

const bill = (letter: 'A' | 'B' | 'C' | 'D', month: number, withSolar: boolean) =>
  billYear({ tariff: demoTariff(letter), ...demoMonth(month, { withSolar }) }).months[0]!;

const cases = [
  { letter: 'A', month: 7, plain: 169.41, withSolar: 12 },
  { letter: 'A', month: 1, plain: 169.41, withSolar: 12 },
  { letter: 'B', month: 7, plain: 229.2224, withSolar: 117.975 },
  { letter: 'B', month: 1, plain: 229.2224, withSolar: 117.975 },
  { letter: 'C', month: 7, plain: 432.3458, withSolar: 228.1304 },
  { letter: 'C', month: 1, plain: 386.1002, withSolar: 194.0642 },
  { letter: 'D', month: 7, plain: 126.089, withSolar: 48.8806 },
  { letter: 'D', month: 1, plain: 116.489, withSolar: 39.6806 },
] as const;

for (const { letter, month, plain, withSolar } of cases) {
  test(`tariff ${letter} in month ${month} as printed: the lines come to the total, within a cent of ${plain} and ${withSolar}`, () => {
    for (const [solar, expected] of [
      [false, plain],
      [true, withSolar],
    ] as const) {
      const printed = paperBill(bill(letter, month, solar));
      const cents = printed.lines.reduce((sum, line) => sum + Math.round(100 * line.dollars), 0);
      expect(Math.round(100 * printed.total)).toBe(cents);
      expect(Math.abs(printed.total - expected)).toBeLessThanOrEqual(0.01 + 1e-9);
    }
  });

  test(`tariff ${letter} in month ${month} comes to ${plain}, and with solar to ${withSolar} dollars`, () => {
    expect(bill(letter, month, false).total).toBeCloseTo(plain, 4);
    expect(bill(letter, month, true).total).toBeCloseTo(withSolar, 4);
  });
}

test('tariff B by hand: 23 weekdays and 8 weekend days of 10.8 peak and 19.2 other kWh', () => {
  const day = 10.8 * 0.36 + 19.2 * 0.15;
  const july = bill('B', 7, false);
  expect(sumLines(july.lines, 'energy')).toBeCloseTo(23 * day + 8 * 1.1 * day, 9);
  expect(sumLines(july.lines, 'fixed')).toBe(14);
});

test('with solar 539.26 kWh come in and 571.06 kWh go out', () => {
  const july = bill('B', 7, true);
  expect(july.importKwh).toBeCloseTo(539.26, 6);
  expect(july.exportKwh).toBeCloseTo(571.06, 6);
  expect(sumLines(july.lines, 'export')).toBeCloseTo(-28.553, 4);
});

test('tariff A banks the 31.8 kWh that went out beyond what came in', () => {
  expect(bill('A', 7, true).carry.bankKwh).toBeCloseTo(31.8, 6);
  expect(sumLines(bill('A', 7, true).lines, 'energy')).toBe(0);
});

test('tariff C in July: energy, baseline of 11 kWh a day and the daily charge are each right', () => {
  const lines = bill('C', 7, true).lines;
  expect(sumLines(lines, 'energy')).toBeCloseTo(262.5734, 4);
  expect(sumLines(lines, 'baseline')).toBeCloseTo(-31 * 11 * 0.09, 6);
  expect(sumLines(lines, 'fixed')).toBeCloseTo(31 * 0.8, 6);
});

test('tariff D bills the highest weekday hour of the window, 2.3 kW with solar', () => {
  const demand = bill('D', 7, true).lines.find((l) => l.kind === 'demand')!;
  expect(demand.quantity).toBeCloseTo(2.3, 9);
  expect(demand.dollars).toBeCloseTo(21.85, 6);
});

test('a bank of kWh is used in a later month, and paid out at the true-up price', () => {
  const tariff = demoTariff('A');
  const december = demoMonth(12, { withSolar: true });
  const withBank = billYear({ tariff, ...december });
  const trueUp = withBank.months[0]!.lines.find((l) => l.is.code === 'yearly-true-up')!;
  expect(trueUp.price).toBe(-0.045);
  // The fixed charge may not be paid by credit, so the dollars are carried.
  expect(withBank.total).toBeCloseTo(12, 9);
  expect(withBank.carry.creditDollars).toBeCloseTo(-trueUp.dollars, 9);
});
