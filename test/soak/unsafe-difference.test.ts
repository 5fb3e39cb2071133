import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { trials } from '../../src/advice/trial';
import type { Answers } from '../../src/interview/answers';
import { quickPlans } from '../../src/plan/changes/quick-plan';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { answersOf } from '../households/read-household';
import { type Advised, unsafeDifference } from './unsafe-difference';

const AS_OF = '2026-11-25';
const trialOf = trials(interview, AS_OF);
const quickly = quickPlans(interview, AS_OF, false);

const advised = (answers: Answers): Advised => ({
  home: homeFromAnswers(interview, answers, AS_OF),
  routes: trialOf(answers).routes,
  facts: quickly({ answers, size: 0 })!,
});

const house = answersOf('birch-street');
const life: Answers = {
  ...house,
  'medical-devices': ['ventilator'],
  'leave-place': 'other-place',
  'trip-hours': 5,
  'road-out': 'one',
};

test('the same answers differ in nothing', () => {
  expect(unsafeDifference(advised(life), advised(life))).toEqual([]);
});

test('it speaks where the plan on some answers would lead into danger', () => {
  const whole = advised(life);
  const without = advised({ ...life, 'medical-devices': ['none'], 'road-out': 'more' });
  const said = unsafeDifference(without, whole).join('\n');
  expect(said).toMatch(/caution second-source is missing/);
  expect(said).toMatch(/leaving point device is missing/);
  expect(said).toMatch(/leaving point one-road is missing/);
  const near = advised({ ...life, 'trip-hours': 1 });
  expect(unsafeDifference(near, whole).join('\n')).toMatch(/leave with 9 h in hand/);
});

test('it speaks of a route that cannot be used, and of devices that would run for longer', () => {
  const told = advised(life);
  const closed = told.routes.map((one) => ({ ...one, verdict: 'cannot' as const }));
  expect(unsafeDifference(told, { ...told, routes: closed })).toEqual([
    `${told.facts.route.kind} is advised, and cannot be used here`,
  ]);
  const hours = (carefulHours: number) => ({
    ...told,
    facts: { ...told.facts, devices: { likelyHours: 60, carefulHours } },
  });
  expect(unsafeDifference(hours(48), hours(24))).toEqual([
    'devices for 48 h, with the whole file 24 h',
  ]);
  // Living thriftily asks less of the same equipment, and the plan says so.
  const lived = (one: Advised, thriftily: boolean): Advised => ({
    ...one,
    facts: { ...one.facts, route: { ...one.facts.route, thriftily } },
  });
  expect(unsafeDifference(lived(hours(48), true), lived(hours(24), false))).toEqual([]);
  expect(unsafeDifference(lived(hours(48), true), lived(hours(24), true))).toHaveLength(1);
});
