import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { isEnough } from '../../src/advice/list/enough';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { compareValues } from '../../src/advice/list/value';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allKinds } from '../../src/routes/all-routes';
import { mustLoads } from '../../src/routes/must-carried';
import { randomHome } from '../random-home';
import {
  atLeast,
  beatenOn,
  type Case,
  caseOf,
  everything,
  falseReasons,
  leastMissed,
  size,
  widths,
} from './list-case';
import { asGoalGrows, asMoneyGrows, asThingsGo, type Moved } from './moves';

/** Homes told at random; the long run takes many more. */
const SEEDS = Array.from({ length: 20 }, (_, i) => 7021 + i);
const cases = SEEDS.map((seed) =>
  caseOf(homeFromAnswers(interview, randomHome(seed), '2026-11-25')),
);

const cheapestEnough = ({ ranked }: Case) => ranked.all.find(isEnough);

describe('what each dollar buys', () => {
  test('holds lists of some length, and homes for which something is enough', () => {
    expect(cases.filter(({ ranked }) => ranked.all.length > 3).length).toBeGreaterThan(8);
    expect(cases.filter((one) => cheapestEnough(one) !== undefined).length).toBeGreaterThan(5);
  });

  test.each(cases.map((one, i) => [SEEDS[i], one] as const))(
    'nothing beats what is on it, and the one advised costs least where that is said, home %i',
    (_, one) => {
      const others = everything(one);
      expect(beatenOn(one, others)).toEqual([]);
      expect(leastMissed(one, others)).toEqual([]);
      expect(falseReasons(one, others)).toEqual([]);
      const best = others.reduce<Weighed | null>(
        (a, b) => (a === null || !atLeast(a.value, b.value) ? b : a),
        null,
      );
      const top = one.ranked.all.at(-1);
      if (best !== null && top !== undefined)
        expect(
          atLeast(top.value, best.value) ||
            one.ranked.all.some(({ value }) => atLeast(value, best.value)),
        ).toBe(true);
    },
  );

  test('what the stricter sizing calls enough is worth more than what only seems so', () => {
    const seems = { devices: 100, odds: 100, sure: false, full: true, long: true, share: 100 };
    const less = { ...seems, sure: true, full: false };
    expect(compareValues(less, seems)).toBeGreaterThan(0);
    expect(compareValues({ ...less, odds: 90 }, seems)).toBeGreaterThan(0);
    expect(compareValues({ ...less, devices: 99 }, seems)).toBeLessThan(0);
  });

  test('as it is printed it has at most eight lines from $0 up, and the one advised is on it, within the money', () => {
    for (const { home, drawn, ranked } of cases) {
      const advice = advise(home, drawn, allKinds(home, drawn, widths), size);
      const { list, advised } = advice;
      expect(list.length).toBeGreaterThan(0);
      expect(list.length).toBeLessThanOrEqual(8);
      expect(list[0]!.usd).toBe(0);
      const prices = list.map(({ usd }) => usd);
      expect(prices).toEqual([...prices].sort((a, b) => a - b));
      if (advised === null) expect(advice.route.kind).toBe('preparation');
      else {
        expect(list[advised]!.route).toBe(advice.route);
        expect(list[advised]!.withinBudget).toBe(true);
      }
      const enough = ranked.chosen !== null && isEnough(ranked.chosen);
      // Where nothing was named that must run, there is nothing to find a way to.
      expect(advice.waysOn === null).toBe(enough || mustLoads(home).length === 0);
    }
  });
});

describe('the advice moves as money, goal and things do, within one generic step', () => {
  const moved = (how: (one: Case, seed: number) => Moved, least: number) => {
    const all = cases.map((one, i) => how(one, SEEDS[i]!));
    expect(all.flatMap(({ wrong }) => wrong)).toEqual([]);
    expect(all.reduce((sum, { compared }) => sum + compared, 0)).toBeGreaterThan(least);
  };

  test('more money is never worse', () =>
    moved((one, seed) => asMoneyGrows(randomHome(seed), one), 10));
  test('a longer goal never costs less', () => moved(asGoalGrows, 3));
  test('one thing less never costs more', () => moved(asThingsGo, 3));
});
