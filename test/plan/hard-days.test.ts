import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { sayLoads } from '../../src/papers/household/details/say-loads';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { ladderOf } from '../../src/plan/ladder/ladder';
import { walkLadder } from '../../src/plan/ride-through/ladder-walk';
import { tooColdForPump } from '../../src/plan/too-cold-for-pump';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

const ridge = (more = {}) =>
  homeFromAnswers(interview, { ...answersOf('ridge-road'), ...more }, '2026-11-25');

describe('a heat pump in the cold', () => {
  const carries = ['heat-pump'] as const;
  test('has a line for the cold in which it cannot keep the house', () => {
    const cold = tooColdForPump(ridge(), { carries })!;
    expect(english.willNotDo({ code: 'too-cold-for-pump', ...cold }, ridge())).toMatch(
      /^Below about -?\d+ °F outdoors the heat pump/,
    );
  });
  test('has none where it is not carried, nor in summer, nor where it never gets so cold', () => {
    expect(tooColdForPump(ridge(), { carries: [] })).toBeNull();
    expect(tooColdForPump(ridge({ 'goal-season': 'summer' }), { carries })).toBeNull();
    expect(tooColdForPump(ridge({ 'home-zip': '96813' }), { carries })).toBeNull();
  });
});

const summer = frozenPlan(
  {
    ...answersOf('ridge-road'),
    'goal-season': 'both',
    'heat-main': 'gas-furnace',
    'cool-main': 'central',
    'one-room': 'no',
    'must-run': ['cool', 'lights', 'phones'],
    'home-zip': '85001',
  },
  '2026-11-25',
  2,
);

test('job and table speak of the same hard day', () => {
  expect(english.job(summer.job, summer.home)[2]).toContain('A hard summer day');
  // A table names it in its head, a list in each of its lines.
  expect(sayLoads(summer, english)[1]!.toLowerCase()).toContain('a hard summer day');
});

test('switching off the last thing that is on buys nothing', () => {
  const home = ridge({ 'must-run': ['fridge', 'freezer'], 'medical-devices': ['none'] });
  const route = summer.routes.find((one) => one.kind === 'power-pack')!;
  const pack = { ...route, carries: ['fridge', 'freezer-chest'] as const, usableKwh: 4 };
  const steps = ladderOf(home, pack);
  const named = steps.filter((step) => step.atPercent < 100 && step.switchOff.length > 0);
  expect(named.at(-1)!.switchOff).toContain('fridge');
  const walked = walkLadder(home, new SyntheticYears(home, 1), pack, steps, 'winter');
  expect(
    walked.steps.find((step) => step.switchOff === named.at(-1)!.switchOff)!.gainsHours,
  ).toBeNull();
});
