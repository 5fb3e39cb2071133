import { expect, test } from 'vitest';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import type { PlanFacts } from '../../../src/plan/changes/plan-facts';
import { madeUp } from './facts';

const changed = (after: Partial<PlanFacts>) =>
  changesBetween(madeUp(), madeUp(after))
    .aspects.filter((one) => one.changed)
    .map(({ code }) => code);

test('a plan laid beside itself differs in nothing', () => {
  expect(changesBetween(madeUp(), madeUp())).toMatchObject({ nothing: true, cautionsCome: [] });
});

test('each aspect differs by its own facts and no other', () => {
  const inlet = {
    kind: 'engine-inlet',
    called: 'engine-inlet',
    title: null,
    isSource: true,
    thriftily: false,
  } as const;
  expect(changed({ route: inlet })).toEqual(['route']);
  const { route } = madeUp();
  expect(changed({ route: { ...route, thriftily: true } })).toEqual(['route']);
  expect(changed({ route: { ...route, thriftily: null } })).toEqual([]);
  expect(changed({ size: { usableKwh: 3.6, watts: null, solarKw: null, step: 0 } })).toEqual([
    'route',
  ]);
  expect(changed({ usd: { low: 900, likely: 1200, high: 1600 } })).toEqual(['price']);
  expect(changed({ reachesGoal: true })).toEqual(['hours']);
  // Odds are those of the goal's length, so another goal is other odds.
  expect(changed({ goalHours: 48 })).toEqual(['hours', 'odds']);
  expect(changed({ odds: { today: 0.5, stored: null } })).toEqual(['odds']);
  // Odds are those of what is carried, and say so where something is left out.
  expect(changed({ leavesOut: [{ id: 'well', name: 'Well pump' }] })).toEqual([
    'odds',
    'leaves-out',
  ]);
  expect(changed({ refill: { everyDays: 2, share: 0.9 } })).toEqual(['refill']);
});

test('what would be printed the same is the same', () => {
  expect(changed({ odds: { today: 0.4249, stored: null } })).toEqual([]);
  expect(changed({ usd: { low: 900.2, likely: 1199.8, high: 1500.4 } })).toEqual([]);
});

test('cautions that come and go are told by id, the gravest first', () => {
  const changes = changesBetween(
    madeUp(),
    madeUp({
      cautions: [
        { id: 'oil-and-service', severity: 2, careful: false },
        { id: 'co-signs', severity: 5, careful: true },
        { id: 'place-of-generator', severity: 5, careful: false },
      ],
    }),
  );
  expect(changes.cautionsCome.map(({ id }) => id)).toEqual([
    'place-of-generator',
    'oil-and-service',
  ]);
  expect(changes.cautionsGo.map(({ id }) => id)).toEqual(['cold-battery']);
  expect(changes.nothing).toBe(false);
});

test('loads are known by id, whatever they are called now', () => {
  const [well, furnace] = [
    { id: 'well', name: 'Well pump' },
    { id: 'furnace', name: 'Furnace blower' },
  ];
  const between = changesBetween(
    madeUp({ leavesOut: [{ id: 'well', name: 'Pump of the well' }, furnace] }),
    madeUp({ leavesOut: [well] }),
  );
  expect(between.nowLeftOut).toEqual([]);
  expect(between.nowCarried).toEqual([furnace]);
});
