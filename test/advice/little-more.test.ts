import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/interview/answers';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';

/** A house told of in ten answers, with no place for a generator that anybody is sure of. */
const house: Answers = {
  'home-zip': '44107',
  'home-kind': 'house',
  'home-tenure': 'own',
  'water-source': 'town',
  'heat-main': 'gas-furnace',
  'must-run': ['fridge', 'heat', 'lights', 'phones'],
  'goal-hours': 24,
  'goal-season': 'not sure',
  'engine-place': 'not sure',
  'people-risk': ['over-65'],
  'medical-devices': ['none'],
};
const adviceFor = (now: number) =>
  frozenPlan({ ...house, 'budget-now': now, 'budget-later': 0 }, '2026-11-25', 5).advice;

describe('what a little more money buys', () => {
  test('is told where it does twice as much of the job, though the furnace stays out of it', () => {
    const advice = adviceFor(1500);
    const { line, moreUsd } = advice.waysOn!.littleMore!;
    const { value } = advice.list[advice.advised!]!;
    expect(line.usd).toBe(1500 + moreUsd);
    expect(moreUsd).toBeLessThanOrEqual(0.25 * 1500);
    expect(line.value.share).toBeGreaterThanOrEqual(2 * value.share);
    expect(english.household.waysOn.littleMore(advice.waysOn!.littleMore!)).toContain(
      'It carries 3 of the 4 that must run, but does not reach the time you asked',
    );
  });

  test('is not told where it is more than a little, or where the money buys that already', () => {
    expect(adviceFor(1000).waysOn!.littleMore).toBeNull();
    expect(adviceFor(1700).waysOn!.littleMore).toBeNull();
  });
});
