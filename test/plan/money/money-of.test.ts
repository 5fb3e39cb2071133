import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import interview from '#compiled/questions.js';
import { dispatchYear, settingOfYear } from '../../../src/bill/dispatch/dispatch-year';
import type { Answers } from '../../../src/interview/answers';
import { sayMoney } from '../../../src/papers/household/money/say-money';
import { moneyData } from '../../../src/papers/plan-file/money-data';
import { moneySchema } from '../../../src/papers/plan-file/money-schema';
import { makePlan } from '../../../src/plan/make-plan';
import { readHome } from '../../../src/store/read-home';
import { english } from '../../../src/words/en';
import { frozenPlan, sharedBank } from '../../frozen-plans';
import { folder } from '../../households/read-household';
import { peakAndRest } from './peak-and-rest';

const read = readHome(join(folder, 'mill-lane.home.yaml'), interview);
if (!read.ok) throw new Error('mill-lane is not sound');
const mill = read.answers;
const planWith = (changed: Answers) => frozenPlan({ ...mill, ...changed }, '2026-11-25', 5);
const moneyWith = (changed: Answers) => planWith(changed).money;
const battery = (changed: Answers, kind = 'battery-circuits') =>
  moneyWith(changed).routes.find((route) => route.kind === kind)!;

/** A difference of 21 cents between 4 pm and 9 pm, every day of the year. */
const clocked: Answers = {
  ...peakAndRest,
  'other-aims': ['lower-bills'],
  'grid-charge': 'yes',
  'export-rule': 'credit',
  'export-price': 5,
};

describe('mill-lane at one price', () => {
  const plan = planWith({});
  const { money } = plan;

  test('a battery without sun saves nothing, and says why', () => {
    const { between } = battery({ 'other-aims': ['lower-bills'] });
    expect(between!.savings).toBe(0);
    expect(sayMoney(plan, plan.advice.route.kind, english).join(' ')).toContain(
      'one price at all hours',
    );
  });

  test('an engine never pays back, in words', () => {
    for (const route of moneyData(plan, english).routes.filter((r) =>
      r.kind.startsWith('engine'),
    )) {
      expect(route.simplePayback).toBe('never within 15 years');
      expect(route.betweenOutages).toBe('does nothing on the bill');
      expect(route.netPresentValue.likely).toBeLessThan(0);
    }
  });

  test('says what the safety costs a year', () => {
    const says = sayMoney(plan, plan.advice.route.kind, english).join('\n');
    expect(says).toContain('No route here earns back its cost');
    expect(says).toContain('that is what the safety costs');
  });

  test('takes no money back for granted, and says that the federal credit has ended', () => {
    expect(money.routes.every((route) => route.incentives === 0)).toBe(true);
    expect(money.incentiveNotes.map(english.incentive).join(' ')).toContain('2025-12-31');
  });

  test('says aloud that prices are more than two years old', () => {
    expect(money.oldPrices.map(english.oldPrice).join(' ')).toContain('is from 2021, 5 years old');
  });
});

describe('its twin with prices by the hour', () => {
  const { between } = battery(clocked);

  test('shifts the share that is not kept: less than the gap times what a day could hold', () => {
    const spare = between!.input!.battery.usableKwh - Math.min(...between!.keptKwh);
    const mostADay = spare * 0.36; // kWh x the peak price, had the charge been free
    expect(between!.strategy).toBe('time-shift');
    expect(between!.savings).toBeGreaterThan(0);
    expect(between!.savings).toBeLessThan(365 * mostADay);
  });

  test('keeps what the outage work asks for, and the store never falls below it', () => {
    const { keptKwh, input } = between!;
    expect(Math.max(...keptKwh)).toBeGreaterThan(0);
    const setting = settingOfYear(input!);
    const { storedKwh } = dispatchYear(setting, 'time-shift').dispatch;
    const least = Math.min(...storedKwh.map((kwh, h) => kwh - setting.problem.floorKwh[h]!));
    expect(least).toBeGreaterThanOrEqual(-1e-9); // rounding of sums of a year of hours
    expect(setting.problem.floorKwh[4000]).toBeCloseTo(keptKwh[5]!, 9); // hour 4,000 is in June
  });

  test('has five reserve levels with one marked; more kept never saves more or carries less', () => {
    const { reserve } = moneyWith(clocked);
    expect(reserve).toHaveLength(5);
    expect(reserve.filter((level) => level.chosen)).toHaveLength(1);
    for (const [i, level] of reserve.entries()) {
      const before = reserve[i - 1];
      if (before === undefined) continue;
      expect(level.savings).toBeLessThanOrEqual(before.savings + 1);
      expect(level.odds).toBeGreaterThanOrEqual(before.odds);
    }
    expect(reserve.at(-1)!.savings).toBeCloseTo(0, 6);
  });

  test('is nowhere above its ceiling', () => {
    for (const route of moneyWith(clocked).routes) {
      const at = route.between;
      if (!at || at.ceiling === null) continue;
      expect(at.savings - at.wear).toBeLessThanOrEqual(at.ceiling + 0.5);
    }
  });

  test('leaves the ceiling out, and says so, where a demand charge is paid', () => {
    const demand = {
      ...clocked,
      'bill-plan': 'demand',
      'demand-price': 9.5,
      'demand-hours': 'h16-21',
    };
    const { between: at } = battery(demand);
    expect(at!.strategy).toBe('peak-limit');
    expect(at!.ceiling).toBeNull();
    expect(at!.ceilingNote).not.toBeNull();
  });
});

test('who wants neither lower bills nor own sun keeps all of the battery for outages', () => {
  const { between } = battery({ ...clocked, 'other-aims': ['none'] });
  expect(between!.keptKwh).toEqual(Array(12).fill(between!.input!.battery.usableKwh));
  expect(between!.savings).toBe(0);
});

test("a quote takes the place of the table's range for its route alone", () => {
  const quoted = { 'quote-kind': 'battery-circuits', 'quote-total': 14500 };
  expect(battery(quoted).money.firstCost).toEqual({ low: 14500, likely: 14500, high: 14500 });
  expect(battery(quoted, 'battery-whole').money.firstCost.low).not.toBe(14500);
});

test('money back told in writing comes off the first cost, down to nothing and no further', () => {
  const told = { 'incentive-who': 'power-company', 'incentive-total': 200000 };
  expect(battery(told).money.firstCost.low).toBe(0);
});

test('what outages cost the household stands apart from the bill and changes no route', () => {
  const told = { 'outage-losses': ['food', 'work'], 'loss-total': 400 };
  const [without, withLoss] = [planWith({}), planWith(told)];
  expect(withLoss.money.losses.map((loss) => loss.name)).toEqual(['food', 'work']);
  expect(moneyData(withLoss, english).routes).toEqual(moneyData(without, english).routes);
});

test('a bill that its prices do not come to is a contradiction to settle', () => {
  const plan = planWith({ ...clocked, 'bill-dollars': 260, 'bill-days': 30 });
  expect(plan.electrical.toSettle.map((one) => one.id)).toContain('bill-not-matched');
});

test('holds no broken number for any answers about money, and fits its schema', () => {
  const cents = fc.constantFrom(0, 1, 15, 90, 200);
  const answers = fc.record({
    'bill-kwh': fc.constantFrom(20, 300, 10000),
    'bill-plan': fc.constantFrom('flat', 'tiers', 'time-of-use', 'demand'),
    'bill-fixed': fc.constantFrom(0, 150),
    'price-peak': cents,
    'price-low': cents,
    'tier-limit': fc.constantFrom(10, 500),
    'tier-first': cents,
    'tier-price': cents,
    'demand-price': fc.constantFrom(0, 60),
    'other-aims': fc.constantFrom(['none'], ['lower-bills'], ['use-solar']),
    'export-rule': fc.constantFrom('net-metering', 'credit', 'none'),
    'grid-charge': fc.constantFrom('yes', 'no'),
    'battery-export': fc.constantFrom('yes', 'no'),
    'outage-often': fc.constantFrom(0, 20),
    'must-run': fc.constantFrom(['sump', 'fridge'], ['none']),
  });
  fc.assert(
    fc.property(answers, (changed) => {
      const plan = makePlan(
        interview,
        { ...mill, ...changed } as Answers,
        '2026-11-25',
        3,
        null,
        sharedBank,
      );
      const data = moneyData(plan, english);
      expect(moneySchema.safeParse(data).error?.issues ?? []).toEqual([]);
      const all = stringify(data) + sayMoney(plan, 'engine-cords', english).join('\n');
      expect(all).not.toMatch(/NaN|Infinity|undefined|-\$0\b|after 0\.0 years/);
    }),
    { seed: 20261125, numRuns: 12 },
  );
});
