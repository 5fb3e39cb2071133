import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { isEnough } from '../../src/advice/list/enough';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { mayGo } from '../../src/advice/ways-on/may-go';
import { withoutLoads } from '../../src/advice/ways-on/without-loads';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allKinds } from '../../src/routes/all-routes';
import { randomHome } from '../random-home';
import { atLeast, beatenOn, type Case, caseOf, everything, size, widths } from './list-case';

/** Homes told at random; the long run takes many more. */
const SEEDS = Array.from({ length: 20 }, (_, i) => 7001 + i);
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
    'nothing beats what is on it, home %i',
    (_, one) => {
      expect(beatenOn(one)).toEqual([]);
      const others = everything(one);
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
      expect(advice.waysOn === null).toBe(enough);
    }
  });
});

describe('the advice moves as money, goal and things do', () => {
  test('more money never gives worse odds', () => {
    for (const one of cases) {
      const { chosen, all } = one.ranked;
      if (chosen === null || !isEnough(chosen)) continue;
      // A hundredth is no difference between the two ways of living.
      for (const dearer of all.filter(({ usd }) => usd > chosen.usd && isEnough(chosen))) {
        const more = homeFromAnswers(
          interview,
          {
            ...randomHome(SEEDS[cases.indexOf(one)]!),
            'budget-now': dearer.usd,
            'budget-later': 0,
          },
          '2026-11-25',
        );
        const then = caseOf(more, one.drawn).ranked.chosen!;
        expect(then.value.odds).toBeGreaterThanOrEqual(chosen.value.odds - 1);
      }
    }
  });

  test('a longer goal never costs less, and one thing less never costs more', () => {
    let compared = 0;
    for (const one of cases) {
      const now = cheapestEnough(one);
      if (now === undefined) continue;
      const { goalHours } = one.home;
      const longer = { ...one.home, goalHours: { ...goalHours, value: 1.5 * goalHours.value } };
      const then = cheapestEnough(caseOf(longer, one.drawn));
      if (then !== undefined) {
        compared += 1;
        expect(then.usd).toBeGreaterThanOrEqual(now.usd);
      }
      for (const load of mayGo(one.home).slice(0, 2)) {
        const less = cheapestEnough(caseOf(withoutLoads(one.home, [load.id]), one.drawn));
        if (one.ranked.all.length === 0 || less === undefined) continue;
        compared += 1;
        expect(less.usd, `without ${load.id}`).toBeLessThanOrEqual(now.usd);
      }
    }
    expect(compared).toBeGreaterThan(6);
  });
});
