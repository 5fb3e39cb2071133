import { expect, test } from 'vitest';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { readingGrade } from '../../interview/reading-grade';

const MOST_GRADE = 7;
const { handSteps, yearTasks, fridge, year, health, family, night, nightRooms } = english.sheets;

const texts: readonly string[] = [
  ...Object.values(handSteps),
  ...Object.values(yearTasks).map(({ does }) => does),
  fridge.purpose,
  fridge.none,
  year.purpose,
  health.purpose,
  health.nothing,
  family.purpose,
];

test('what is read on the sheets for the household has a reading grade of 7 or lower, taken sheet by sheet', () => {
  const grades = {
    night: readingGrade(Object.values(night).join(' ')),
    leaving: readingGrade(
      planOf('birch-street')
        .leavingPoint.map(english.sheets.nightLeaving)
        .concat(nightRooms([{ code: 'cold', careful: true, oneRoad: false }]))
        .join(' '),
    ),
    steps: readingGrade(Object.values(handSteps).join(' ')),
    year: readingGrade(
      Object.values(yearTasks)
        .map(({ does }) => does)
        .join(' '),
    ),
  };
  expect(Math.max(...Object.values(grades)), JSON.stringify(grades)).toBeLessThanOrEqual(
    MOST_GRADE,
  );
});

test('no single instruction is hard to read', () => {
  const hard = texts
    .filter((text) => text.split(' ').length > 4)
    .map((text) => ({ text, grade: readingGrade(text) }))
    .filter(({ grade }) => grade > MOST_GRADE + 2);
  expect(hard).toEqual([]);
});
