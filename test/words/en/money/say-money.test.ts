import { expect, test } from 'vitest';
import { costPart } from '../../../../src/bill/lifecycle/cost-part';
import { routeMoney } from '../../../../src/bill/lifecycle/route-money';
import { billYear } from '../../../../src/bill/tariff/bill-year';
import { demoTariff } from '../../../../src/bill/tariff/demo-tariffs';
import { paperBill } from '../../../../src/bill/tariff/paper-bill';
import { dollars, sayBill } from '../../../../src/words/en/money/say-bill';
import { sayRouteMoney } from '../../../../src/words/en/money/say-route-money';
import { demoMonth } from '../../../fixtures/demo-month';

test('a bill reads as on paper', () => {
  const bill = billYear({ tariff: demoTariff('B'), ...demoMonth(7, { withSolar: true }) })
    .months[0]!;
  // By hand, peak: 23 weekdays x (1.2 + 2.1 + 2.3 + 2.1) + 8 weekend days x (1.42 + 2.34 + 2.53 + 2.31) = 245.9 kWh.
  expect(sayBill(paperBill(bill))).toEqual([
    'Fixed charge: $14.00',
    'Energy, peak: 245.9 kWh x $0.36 = $88.52',
    'Energy, off-peak: 293.4 kWh x $0.15 = $44.00',
    'Export credit: 571.1 kWh = -$28.55',
    'Total: $117.97',
  ]);
});

test('dollars carry their sign before the dollar sign and never a minus zero', () => {
  expect(dollars(-28.553)).toBe('-$28.55');
  expect(dollars(-0.001)).toBe('$0.00');
});

test('an engine is said to cost so much a year and never to pay back', () => {
  const parts = [costPart({ equipmentClass: 'standby-engine' })];
  const money = routeMoney({
    parts,
    years: 15,
    rate: 0.03,
    hoursRidden: { ordinary: 2, major: 4 },
  });
  const says = sayRouteMoney(money, { years: 15 });
  expect(says[0]).toBe('It costs $6,000 to $20,000 to begin with.');
  expect(says.join(' ')).toContain('Paid back: never within 15 years.');
  expect(says.join(' ')).toContain('price of the safety');
  expect(says.join(' ')).not.toMatch(/NaN|Infinity/);
});
