import { expect, test } from 'vitest';
import { planInFile } from '../../../src/papers/plan-file/facts-in-file';
import { planData } from '../../../src/papers/plan-file/plan-data';
import type { PlanData } from '../../../src/papers/plan-file/plan-schema';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import { factsOfPlan } from '../../../src/plan/changes/facts-of';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const AS_OF = '2026-11-25';
const plan = frozenPlan(answersOf('mill-lane'), AS_OF, 5);
const data = planData(plan, english);
const facts = planInFile(data)!.facts;

test('a plan file holds the facts of its plan, to the digits it keeps', () => {
  const { aspects, cautionsCome, cautionsGo } = changesBetween(factsOfPlan(plan), facts);
  // Prices are kept to four digits in the file, so they may be printed otherwise.
  expect(aspects.filter((one) => one.changed && one.code !== 'price')).toEqual([]);
  expect([...cautionsCome, ...cautionsGo]).toEqual([]);
  expect(facts.usd.likely).toBeCloseTo(factsOfPlan(plan).usd.likely, -1);
});

/** Without a source nothing is carried, in the file as in the plan. */
test('getting ready leaves out all that must run', () => {
  const ready = frozenPlan(
    { ...answersOf('mill-lane'), 'budget-now': 0, 'budget-later': 0 },
    AS_OF,
    5,
  );
  const read = planInFile(planData(ready, english))!.facts;
  expect(read.route.isSource).toBe(false);
  expect(read.lasts.code).toBe('no-power');
  expect(read.leavesOut.map(({ id }) => id)).toEqual(
    factsOfPlan(ready).leavesOut.map(({ id }) => id),
  );
});

/** What the first form had: names where ids stand now, no language, no list, no ride-through. */
function inFormOne({ rideThrough: _, list: __, language: ___, ...rest }: PlanData): unknown {
  const name = ({ name: own }: { name: string }) => own;
  return {
    ...rest,
    lampkeeperPlan: 1,
    schemaVersion: 1,
    routes: rest.routes.map((route) => ({
      ...route,
      carries: route.carries.map(name),
      leavesOut: route.leavesOut.map(({ name: own, why, must }) => ({ name: own, why, must })),
    })),
  };
}

/** Forms 2 and 3 had ids, and the shares of the ride-through, but no cans filled. */
function inForm(form: 2 | 3, { list: _, ...rest }: PlanData): unknown {
  const routes = rest.rideThrough.routes.map(({ onceCansAreFilled: __, ...route }) => route);
  return { ...rest, lampkeeperPlan: form, rideThrough: { ...rest.rideThrough, routes } };
}

test.each([
  ['form 1', inFormOne(data)],
  ['form 2', inForm(2, data)],
  ['form 3', inForm(3, data)],
])('a plan of %s is read as well, and differs by what that form did not hold', (form, older) => {
  const read = planInFile(JSON.parse(JSON.stringify(older)))!;
  expect(read.asOf).toBe(AS_OF);
  const { aspects, nowLeftOut, nowCarried, cautionsCome } = changesBetween(read.facts, facts);
  const changed = aspects.filter((one) => one.changed).map(({ code }) => code);
  expect(changed).toEqual(['hours', 'odds']);
  expect([nowLeftOut, nowCarried, cautionsCome]).toEqual([[], [], []]);
  expect(read.facts.odds === null).toBe(form === 'form 1');
});

test('what is no whole plan is not read', () => {
  for (const none of [null, 3, 'plan', [], {}, { ...data, routes: [] }, { ...data, goal: {} }])
    expect(planInFile(none)).toBeNull();
});
