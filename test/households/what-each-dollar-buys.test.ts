import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/advice/list/line';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { sheetsOf } from '../../src/papers/sheets/sheets-of';
import { english } from '../../src/words/en';
import { planOf } from './read-household';

/** What a competent practitioner would say of the demo homes: our judgement, not an outside check. */
const listOf = (name: string, changed = {}) => planOf(name, changed).advice;
const reaching = (list: readonly Line[]) => list.filter((line) => line.reaches);

describe('tower-six: $900, 48 h, a CPAP of 34 W', () => {
  const { list, advised, waysOn } = listOf('tower-six');

  test('a battery lantern, the router some hours and a pack of 1 kWh do it within the money', () => {
    const line = list[advised!]!;
    expect(line).toMatchObject({ way: 'thrifty', reaches: true, withinBudget: true });
    expect(line.route!.nameplateKwh).toBe(1);
    expect(line.usd).toBeLessThanOrEqual(900);
    expect(line.carried.carried).toBe(line.carried.of);
    expect(waysOn).toBeNull();
  });

  test('as usual the same pack is far too small', () => {
    const usual = list.filter(({ way, route }) => way === 'usual' && route !== null);
    expect(reaching(usual)).toEqual([]);
  });
});

describe('birch-street: 10 gallons kept, 21 for the goal', () => {
  const plan = planOf('birch-street');
  const { list, advised, route } = plan.advice;

  test('the cans it tells to buy are counted, and reach the goal', () => {
    const line = list[advised!]!;
    expect(line).toMatchObject({ reaches: true, way: 'usual' });
    expect(line.storedGal).toBeGreaterThan(10);
    expect(line.value.odds).toBeGreaterThanOrEqual(95);
    expect(route.parts.map((part) => part.equipmentClass)).toContain('fuel-storage');
  });

  test('the sizes beside it hold the gallons that reach it', () => {
    const [ride] = plan.rideThrough.routes;
    const gallons = ride!.neighbors.map(({ step }) => (step.code === 'fuel' ? step.gallons : 0));
    expect(gallons).toContain(list[advised!]!.storedGal);
    expect(Math.max(...ride!.neighbors.map(({ odds }) => odds ?? 0))).toBeGreaterThan(0.95);
  });

  test('more money buys nobody needed at home, and the list says by how much it is above', () => {
    const last = list.at(-1)!;
    expect(last.route!.kind).toBe('standby-engine');
    expect(last.withinBudget).toBe(false);
    expect(planMarkdown(plan, english)).toContain(
      'above the $5,000 you told us ($1,800 now, $3,200 later)',
    );
    expect(plan.advice.reason).toMatchObject({ budgetUsd: 5000, laterUsd: 3200 });
  });

  test('the sheet for the family says so too, and says nothing of the kind of what fits', () => {
    const items = sheetsOf(plan, english)
      .find(({ id }) => id === 'family')!
      .blocks.flatMap((block) => ('items' in block ? block.items : []));
    const over = Math.round(list.at(-1)!.usd - 5000).toLocaleString('en-US');
    const better = items.find((item) =>
      item.startsWith(english.sheets.family.dearer('better', '')),
    )!;
    const cheaper = items.find((item) => item.startsWith(english.sheets.family.cheaper('')))!;
    expect(better).toContain(`$${over} above your money`);
    expect(cheaper).not.toContain('above your money');
  });
});

test('what gives no power is not said to carry anything', () => {
  const line = listOf('birch-street').list.at(-1)!;
  const dark: Line = { ...line, hours: null, route: { ...line.route!, carries: [] } };
  const { inShort } = english.household.dollarsBuy;
  expect(inShort(line)).toMatch(/: carries all 7 that must run/);
  expect(inShort(dark)).toMatch(/: stands in for all 7 that must run, with no power at all/);
});

test('ridge-road: one generator carries all from the propane that is there, and nothing dearer is listed', () => {
  const { list, advised } = listOf('ridge-road');
  expect(advised).toBe(list.length - 1);
  expect(list[advised!]!.route!.fuel!.fuel).toBe('propane');
  expect(list[advised!]!.value.odds).toBe(100);
});

test('where $1,200 leaves the furnace out, the plan says how much more, and what may go, and when to leave', () => {
  const plan = planOf('birch-street', { 'budget-now': 1200, 'budget-later': 0 });
  const { waysOn, list, advised } = plan.advice;
  expect(list[advised!]!.reaches).toBe(false);
  expect(waysOn!.moreMoney!.line.route!.kind).toBe('engine-inlet');
  expect(waysOn!.moreMoney!.moreUsd).toBe(waysOn!.moreMoney!.line.usd - 1200);
  expect(waysOn!.lessCarried!.without).toEqual(['furnace-gas']);
  expect(waysOn!.lessCarried!.line.usd).toBeLessThanOrEqual(1200);
  const [front, details] = planMarkdown(plan, english).split('\n# The details\n');
  expect(front).toMatch(/Ways on, for the whole job: \$/);
  // Without its furnace in winter a home does less than the whole job, and is cold.
  expect(front).toMatch(/for a smaller job: [^.]*doing without the furnace \(no heat then\)/);
  expect(details).toMatch(/Less carried: without the furnace, .* There is no heat then: live in/);
  expect(front).toMatch(/When to leave: /);
});

test('where a week is wished for and the limit of gasoline is a few days, the goal that is reached is named', () => {
  const { waysOn } = listOf('birch-street', { 'goal-hours': 168 });
  expect(waysOn!.shorterGoal!.hours).toBeGreaterThan(72);
  expect(waysOn!.shorterGoal!.hours).toBeLessThan(168);
  expect(waysOn!.moreMoney!.line.route!.kind).toBe('standby-engine');
});

test('mill-lane: where $680 does it thriftily, $1,040 is not said to cost least of all', () => {
  const { list, advised, reason } = listOf('mill-lane');
  const thrifty = list.find(({ way, reaches }) => way === 'thrifty' && reaches)!;
  const { usd } = list[advised!]!;
  expect(thrifty.usd).toBeLessThan(usd);
  expect(reason.others).toMatchObject([
    { standing: 'thriftily', usd: thrifty.usd, apartUsd: usd - thrifty.usd },
  ]);
  const why = english.whyAdvised(reason);
  expect(why).toContain(', with nothing turned off or used by turns, it costs least');
  expect(why).toContain('$680 in all');
});
