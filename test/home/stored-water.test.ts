import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';

const well = (gallons: number, also: Answers = {}) => {
  const answers: Answers = {
    ...also,
    'people-count': 4,
    'goal-hours': 120,
    'home-kind': 'house',
    'water-source': 'well',
    'water-stored': gallons,
    'must-run': ['well'],
  };
  const { loads } = homeFromAnswers(interview, answers, '2026-11-25');
  return loads.find((load) => load.id === 'well')!.kwhPerDay.winter;
};

test('stored water lets the well pump rest by its share of what the people need', () => {
  // 4 people x 4 gal x 5 days = 80 gal: 40 gal are half of it.
  expect(well(40).value).toBeCloseTo(well(0).value / 2, 9);
  expect(well(500).value).toBe(0);
  expect(well(40).high).toBe(well(0).high);
});

test('with animals kept outside the pump does not rest, for jugs do not water them', () => {
  expect(well(40, { animals: ['stay-outside'] }).value).toBe(well(0).value);
  expect(well(40, { animals: ['pets'] }).value).toBe(well(40).value);
});
