import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { glanceWords } from '../../../src/faces/glance-words';
import type { Answers } from '../../../src/interview/answers';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { answersOf } from '../../households/read-household';

const draftOf = draftMaker(interview);
const answers = answersOf('birch-street');
const routeOf = (changed: Answers) => draftOf({ ...answers, ...changed }).glance.route;

test('a first plan stands in the pane once enough is told, and not before', () => {
  expect(routeOf({})).toMatchObject({ isSource: true });
  const thinHomes: Answers[] = [
    {},
    { 'home-zip': '43004' },
    { 'must-run': ['fridge'], 'fridge-count': 1 },
  ];
  for (const thin of thinHomes) {
    const { glance } = draftOf(thin);
    expect(glance.route).toBeNull();
    expect(glance.missing.length).toBeGreaterThan(0);
    const words = glanceWords(glance).join(' ');
    expect(words).toContain('A first plan stands here once enough is told.');
    expect(words).not.toMatch(/\d (h|days?)\b|\$/);
  }
});

test('it moves with the answers: more that must run costs more or lasts less', () => {
  const few = routeOf({ 'must-run': ['fridge'] })!;
  const more = routeOf({ 'must-run': ['fridge', 'heat', 'well'], 'fridge-count': 3 })!;
  const hours = (route: typeof few) => route.hours?.value ?? Number.POSITIVE_INFINITY;
  expect(more.costUsd.value > few.costUsd.value || hours(more) < hours(few)).toBe(true);
});

test('the same answers give the same glance, whichever were asked about before', () => {
  const before = glanceWords(draftOf(answers).glance);
  draftOf({ ...answers, 'home-zip': '99723' });
  expect(glanceWords(draftOf(answers).glance)).toEqual(before);
});
