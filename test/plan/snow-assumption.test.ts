import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { weatherAssumptions } from '../../src/plan/sureness/weather-assumptions';
import { sayAssumption } from '../../src/words/en/sureness/say-assumption';

const answers: Answers = {
  'home-zip': '55401',
  'home-kind': 'house',
  'home-tenure': 'own',
  'goal-season': 'winter',
  'roof-face': 'south',
  'roof-area': 600,
  'roof-shade': 'little',
};

const snow = (changed: Answers = {}) =>
  weatherAssumptions(homeFromAnswers(interview, { ...answers, ...changed }, '2026-11-25')).find(
    ({ code }) => code === 'snow-on-panels',
  );

describe('that snow goes by cold and slope alone', () => {
  test('is said with its share where a winter is planned for under a cold sky', () => {
    // Minneapolis: the coldest month at about -10 C loses the most, 0.35 x cos^2 of a slope of 6 in 12 (26.6 degrees) = 0.28.
    const share = Number(/up to (\d+) %/.exec(sayAssumption(snow()!).assumed)![1]);
    expect(share).toBeGreaterThan(22);
    expect(share).toBeLessThanOrEqual(28);
    expect(sayAssumption(snow()!).because).toMatch(/do not know how much snow falls/);
  });

  test('is not said where it is warm, in summer, or without a roof for panels', () => {
    expect(snow({ 'home-zip': '85003' })).toBeUndefined();
    expect(snow({ 'goal-season': 'summer' })).toBeUndefined();
    expect(snow({ 'roof-face': 'none' })).toBeUndefined();
  });
});
