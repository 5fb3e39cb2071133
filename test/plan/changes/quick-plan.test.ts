import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import { quickPlans } from '../../../src/plan/changes/quick-plan';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const AS_OF = '2026-11-25';
const HOMES = ['mill-lane', 'birch-street', 'ridge-road', 'tower-six'];
const quick = quickPlans(interview, AS_OF, false);

test('quick facts are those of a whole plan on as few years: route, size, price, what is left out, cautions', () => {
  for (const name of ['mill-lane', 'tower-six']) {
    const answers = answersOf(name);
    const facts = quick({ answers, size: 0 })!;
    const plan = frozenPlan(answers, AS_OF, 5);
    expect(facts.route.kind, name).toBe(plan.advice.route.kind);
    expect(facts.usd.likely, name).toBe(plan.advice.route.costUsd.value);
    expect(facts.size.usableKwh, name).toBe(plan.advice.route.usableKwh);
    expect(facts.cautions.map(({ id }) => id)).toEqual(plan.cautions.map(({ id }) => id));
    const out = plan.advice.route.leavesOut.filter(({ must }) => must).map(({ load }) => load);
    expect(facts.leavesOut.map(({ id }) => id).sort(), name).toEqual(out.sort());
  }
});

test('the same answers give the same facts, whatever was tried before', () => {
  const answers = answersOf('mill-lane');
  const first = quick({ answers, size: 0 });
  quick({ answers: { ...answers, 'home-zip': '33101' }, size: 1 });
  quick({ answers: { ...answers, 'goal-hours': 96 }, size: 0 });
  expect(quick({ answers, size: 0 })).toEqual(first);
  expect(quickPlans(interview, AS_OF, false)({ answers, size: 0 })).toEqual(first);
});

test('a longer goal is not cheaper, and a shorter one is not dearer', () => {
  const answers = answersOf('ridge-road');
  const usd = [24, 120, 240].map(
    (hours) => quick({ answers: { ...answers, 'goal-hours': hours }, size: 0 })!.usd.likely,
  );
  expect(usd).toEqual([...usd].sort((a, b) => a - b));
});

test('a place for a generator that goes takes what kills with it, and a new one brings it', () => {
  const answers = answersOf('mill-lane');
  const now = quick({ answers, size: 0 })!;
  const none = quick({ answers: { ...answers, 'engine-place': 'none' }, size: 0 })!;
  expect(now.route.kind).toBe('engine-cords');
  expect(none.route.kind).not.toMatch(/engine/);
  const { cautionsCome } = changesBetween(none, now);
  expect(cautionsCome.some(({ severity }) => severity === 5)).toBe(true);
});

test('one size larger costs more, one smaller costs less, and a size that is not to be had is none', () => {
  for (const name of HOMES) {
    const answers = answersOf(name);
    const [smaller, now, larger] = ([-1, 0, 1] as const).map((size) => quick({ answers, size }));
    if (larger !== null) expect(larger!.usd.likely, name).toBeGreaterThan(now!.usd.likely);
    if (smaller !== null) expect(smaller!.usd.likely, name).toBeLessThan(now!.usd.likely);
    expect(
      [smaller, larger].some((one) => one !== null),
      name,
    ).toBe(true);
  }
});

test('odds from so few years, and hours counted over them, are rounded down, and never "all"', () => {
  for (const name of HOMES) {
    const { odds, lasts } = quick({ answers: answersOf(name), size: 0 })!;
    expect(odds!.today).toBeLessThanOrEqual(0.95);
    expect(Math.round(20 * odds!.today) / 20).toBe(odds!.today);
    if (lasts.code === 'hours' && lasts.overDrawnYears)
      expect(Number.isInteger(lasts.today.likely)).toBe(true);
  }
});

test('a refill that comes in time is told beside, and moves nothing else', () => {
  const answers = answersOf('birch-street');
  const now = quick({ answers: { ...answers, 'fuel-refill': 'no' }, size: 0 })!;
  const soon = quick({
    answers: { ...answers, 'fuel-refill': 'likely', 'fuel-refill-days': 1 },
    size: 0,
  })!;
  expect(now.refill).toBeNull();
  expect(soon.refill!.everyDays).toBe(1);
  expect(soon.refill!.share).toBeGreaterThan(now.odds!.today);
  expect({ ...soon, refill: null, cautions: [] }).toEqual({ ...now, cautions: [] });
});

test('a generator one size larger says how long it lasts: less long on the same fuel', () => {
  const answers = answersOf('mill-lane');
  const [now, larger] = ([0, 1] as const).map((size) => quick({ answers, size })!.lasts);
  if (now?.code !== 'hours' || larger?.code !== 'hours') throw new Error('not in hours');
  expect(larger.today.likely).toBeLessThan(now.today.likely);
  expect(larger.today.low).toBeLessThan(now.today.low);
});
