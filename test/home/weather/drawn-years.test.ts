import { expect, test } from 'vitest';
import { drawnYears } from '../../../src/home/weather/drawn-years';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { homeOfAnswers } from '../../home-of-answers';
import { answersOf } from '../../households/read-household';

const homeOf = (changed: object) =>
  homeOfAnswers({ ...answersOf('ridge-road'), ...changed }, '2026-11-28');

test('homes of a place share its drawn years, another roof its own sun, and all is as if drawn alone', () => {
  const [one, longer, turned] = [{}, { 'goal-hours': 30 }, { 'roof-face': 'north' }].map(homeOf);
  const drawn = drawnYears(one!, 2);
  expect(drawnYears(longer!, 2)).toBe(drawn);
  const other = drawnYears(turned!, 2);
  expect(other).not.toBe(drawn);
  expect(other.airC()).toBe(drawn.airC());
  expect(drawnYears(one!, 3).years).toBe(3);
  for (const [home, shared] of [
    [one!, drawn],
    [turned!, other],
  ] as const) {
    const alone = new SyntheticYears(home, 2);
    expect(shared.sunKwhPerKw()).toEqual(alone.sunKwhPerKw());
    expect(shared.loadKw(home.loads)).toEqual(alone.loadKw(home.loads));
  }
});
