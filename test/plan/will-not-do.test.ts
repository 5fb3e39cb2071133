import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { NOT_SURE } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { willNotDo } from '../../src/plan/will-not-do';
import { english } from '../../src/words/en';
import { answersOf, planOf } from '../households/read-household';

const { advice, routes, home } = planOf('birch-street');
const route = routes.find((one) =>
  one.leavesOut.some(({ load, must }) => must && load === 'sump'),
)!;
const saidOf = (of: typeof home) =>
  willNotDo(of, { ...advice, route }, null)
    .map((one) => english.willNotDo(one, of))
    .filter((line) => /^Sump pump[,:] /.test(line));

test('what is left out is called theirs only where they told of it', () => {
  expect(saidOf(home).join(' ')).toMatch(/^Sump pump, which you said must keep running: /);
  const unsure = homeFromAnswers(
    interview,
    { ...answersOf('birch-street'), sump: NOT_SURE, 'must-run': NOT_SURE },
    '2026-11-25',
  );
  expect(saidOf(unsure).join(' ')).not.toContain('you said');
  expect(saidOf(unsure).join(' ')).toMatch(
    /^Sump pump, which counts as what must keep running until you tell us: /,
  );
});
