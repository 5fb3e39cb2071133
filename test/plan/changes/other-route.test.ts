import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { trials } from '../../../src/advice/trial';
import { otherRoute } from '../../../src/plan/changes/other-route';
import type { Plan } from '../../../src/plan/plan';
import { sayOtherRoute } from '../../../src/words/en/changes/say-other-route';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const answers = answersOf('mill-lane');
const plan = frozenPlan(answers, '2026-11-25', 5);

test('where the talk and the plan advise the same nothing is said', () => {
  expect(trials(interview, plan.asOf)(answers).advice.route.kind).toBe(plan.advice.route.kind);
  expect(otherRoute(interview, answers, plan)).toBeNull();
});

test('where they differ both are named, with the years each rests on', () => {
  const route = plan.routes.find(({ kind }) => kind === 'power-pack')!;
  const other: Plan = { ...plan, advice: { ...plan.advice, route } };
  const found = otherRoute(interview, answers, other)!;
  expect(found).toMatchObject({ talkYears: 5, planYears: 5 });
  expect(sayOtherRoute({ ...found, planYears: 100 })).toBe(
    'Beside the questions stood: portable generator with cords. That was a quick look at 5 drawn years. This plan counts 100, and advises: plug-in power pack.',
  );
});

test('where too little is told nothing is compared', () => {
  const undecided = frozenPlan({ 'home-zip': '48911' }, '2026-11-25', 5);
  expect(undecided.undecided.length).toBeGreaterThan(0);
  expect(otherRoute(interview, { 'home-zip': '48911' }, undecided)).toBeNull();
});
