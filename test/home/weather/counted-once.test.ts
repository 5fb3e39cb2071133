import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { trials } from '../../../src/advice/trial';
import { answersOf } from '../../households/read-household';

const trial = trials(interview, '2026-11-28')(answersOf('ridge-road'));

test('what was counted with the same loads is counted once for all roofs and homes of a place, each roof apart', () => {
  const { home, drawn } = trial;
  let made = 0;
  const count = (of: typeof drawn, loads = home.loads, by = 1) =>
    of.counted(loads, ['hours', by], () => {
      made += 1;
      return made;
    });
  const same = drawn.over(home);
  expect([count(drawn), count(same), count(same, [...home.loads])]).toEqual([1, 1, 1]);
  // Fewer loads, and another number, are other counts.
  expect([count(same, home.loads.slice(1)), count(same, home.loads, 2)]).toEqual([2, 3]);
  const roofed = trials(
    interview,
    '2026-11-28',
  )({ ...answersOf('ridge-road'), 'roof-face': 'north' });
  const other = drawn.over(roofed.home);
  expect(count(other)).toBe(4);
  expect(JSON.stringify(other.roof)).not.toBe(JSON.stringify(drawn.roof));
});

test('the energy of loads is added up where it is looked at, and only once', () => {
  const { must } = trial.home.demand;
  expect(must.kwhPerDay).toBe(must.kwhPerDay);
  expect(Object.keys(must)).toContain('wattsByHour');
  expect(JSON.parse(JSON.stringify(must)).kwhPerDay.winter.value).toBe(must.kwhPerDay.winter.value);
});
