import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { answersOf } from '../households/read-household';

test('part of an hour is planned for as a whole one, so that fuel, sizes and odds count the same outage', () => {
  const goal = (hours: number) =>
    homeFromAnswers(interview, { ...answersOf('tower-six'), 'goal-hours': hours }, '2026-11-25')
      .goalHours.value;
  expect([24, 24.1, 24.6].map(goal)).toEqual([24, 25, 25]);
});
