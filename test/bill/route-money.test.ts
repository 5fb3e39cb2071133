import { describe, expect, test } from 'vitest';
import { costPart, oldPrices } from '../../src/bill/lifecycle/cost-part';
import { uniformPresentValue } from '../../src/bill/lifecycle/factors';
import { outageLosses } from '../../src/bill/lifecycle/outage-worth';
import { routeMoney } from '../../src/bill/lifecycle/route-money';
import { carriesOver, stagedBuying } from '../../src/bill/lifecycle/staged-buying';
import { sayCarriesOver } from '../../src/words/en/money/say-carries-over';
import { sayPrice } from '../../src/words/en/money/say-old-price';

const generator = [
  costPart({ equipmentClass: 'portable-engine' }),
  costPart({ equipmentClass: 'inlet-interlock' }),
];
const study = { years: 15, rate: 0.03 };

describe('an engine saves nothing on the bill', () => {
  const money = routeMoney({
    ...study,
    parts: generator,
    fuelPerYear: { low: 20, likely: 40, high: 80 },
  });

  test('payback is never in all three cases, and what is left of it at the end makes no return', () => {
    for (const found of Object.values(money.byCase)) {
      expect(found.simplePayback).toEqual({ kind: 'never' });
      expect(found.discountedPayback).toEqual({ kind: 'never' });
      expect(found.rates.rates.every((rate) => rate < 0)).toBe(true);
    }
  });

  test('the cost is bought, kept up, bought again in year 8 and credited for what is left', () => {
    const flow = money.byCase.likely.flow;
    expect(flow[0]).toBe(-(1100 + 700));
    expect(flow[1]).toBe(-(75 + 40));
    expect(flow[8]).toBe(-(75 + 40 + 1100));
    // The second generator has 1 of 8 years left; the inlet 15 of 30.
    expect(flow[15]).toBeCloseTo(-(75 + 40) + 1100 / 8 + 700 / 2, 9);
  });

  test('low, likely and high are in order and nothing is NaN or infinite', () => {
    for (const range of [
      money.firstCost,
      money.lifeCycleCost,
      money.costPerYear,
      money.netPresentValue,
    ]) {
      expect(range.low).toBeLessThan(range.likely);
      expect(range.likely).toBeLessThan(range.high);
      expect(Object.values(range).every(Number.isFinite)).toBe(true);
    }
  });

  test('with no expected outage hours there is no cost an hour, rather than infinity', () => {
    const none = routeMoney({ ...study, parts: generator, hoursRidden: { ordinary: 0, major: 0 } });
    expect(none.perOutageHour).toBeNull();
    expect(none.perBackupKwh).toBeNull();
  });
});

test('cost a year, an hour and a kWh are the net present cost spread level', () => {
  const parts = [
    costPart({ equipmentClass: 'battery', units: 12.5, quote: { dollars: 18_787.5, year: 2026 } }),
  ];
  const savingsPerYear = { low: 500, likely: 672, high: 800 };
  const hoursRidden = { ordinary: 2, major: 4 };
  const money = routeMoney({ ...study, parts, savingsPerYear, hoursRidden, backupKwhPerYear: 7 });
  const spread = uniformPresentValue(study);
  const upkeep = 12.5 * 10;
  const perYear = 18_787.5 / spread + upkeep - 672;
  expect(money.costPerYear.likely).toBeCloseTo(perYear, 6);
  expect(money.perOutageHour!.likely).toBeCloseTo(perYear / 6, 6);
  expect(money.perOrdinaryHour!.likely).toBeCloseTo(perYear / 2, 6);
  expect(money.perBackupKwh!.likely).toBeCloseTo(perYear / 7, 6);
});

test('incentives are none unless given', () => {
  const with500 = routeMoney({ ...study, parts: generator, incentives: 500 });
  expect(routeMoney({ ...study, parts: generator }).firstCost.likely).toBe(1800);
  expect(with500.firstCost.likely).toBe(1300);
});

test('a quote replaces the range of its line and is said to be old after two years', () => {
  const quoted = costPart({
    equipmentClass: 'battery',
    units: 10,
    quote: { dollars: 9000, year: 2022 },
  });
  expect(quoted.cost).toEqual({ low: 9000, likely: 9000, high: 9000 });
  expect(oldPrices([quoted], '2024-12-31')).toEqual([]);
  expect(sayPrice(oldPrices([quoted], '2026-11-25')[0]!)).toContain('Your quote');
  const [panel] = oldPrices([costPart({ equipmentClass: 'panel-upgrade' })], '2026-11-25');
  expect(panel).toMatchObject({ year: 2021, ageYears: 5, quoted: false });
});

test('parts are bought in stages in the order given', () => {
  const small = costPart({ equipmentClass: 'cords', quote: { dollars: 60, year: 2026 } });
  const [first, second, later] = stagedBuying([small, ...generator]);
  expect(first!.parts).toEqual([small]);
  expect(second!.parts).toEqual([]);
  expect(later!.parts).toEqual(generator);
  expect(sayCarriesOver(carriesOver(generator))).toEqual([
    'Moves house with you: portable generator, 2 to 10 kW.',
    'Stays with the house: power inlet and breaker interlock, installed.',
  ]);
});

test('losses count only the outages long enough to bring them', () => {
  const losses = [
    { name: 'food', dollars: 250, afterHours: 24, each: 'outage' as const },
    { name: 'hotel', dollars: 150, afterHours: 12, each: 'day' as const },
  ];
  const outages = [
    { hours: 4, perYear: 1.3 },
    { hours: 72, perYear: 0.2 },
  ];
  const [food, hotel] = outageLosses(losses, outages);
  expect(food!.dollarsPerYear).toBeCloseTo(250 * 0.2, 9);
  expect(hotel!.dollarsPerYear).toBeCloseTo(150 * 3 * 0.2, 9);
});
