import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { hardestSeason } from '../../src/advice/hardest-season';
import { candidatesOf } from '../../src/advice/list/candidate';
import { isEnough } from '../../src/advice/list/enough';
import { type Ranked, rank } from '../../src/advice/list/list-of';
import { asUsual, thriftily } from '../../src/advice/list/living';
import type { SizeKind } from '../../src/advice/list/source';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { type Value, weighingOf, worthOf } from '../../src/advice/list/value';
import { SizeOdds } from '../../src/advice/ride/size-odds';
import { mayGo } from '../../src/advice/ways-on/may-go';
import { withoutLoads } from '../../src/advice/ways-on/without-loads';
import { widthsOf } from '../../src/home/build-home';
import type { Home } from '../../src/home/home';
import { World } from '../../src/home/world';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allKinds, sizedKind } from '../../src/routes/all-routes';
import { randomHome } from '../random-home';

/** Homes told at random; the long run takes many more. */
const SEEDS = Array.from({ length: 20 }, (_, i) => 7001 + i);
const YEARS = 2;
const widths = widthsOf(interview);
const size: SizeKind = (kind, home, world) => sizedKind(kind, home, world, widths);

interface Case {
  readonly home: Home;
  readonly world: World;
  readonly ranked: Ranked;
}

function caseOf(home: Home, world = new World(home, YEARS)): Case {
  return { home, world, ranked: rank(home, world, allKinds(home, world, widths), size) };
}

const cases = SEEDS.map((seed) =>
  caseOf(homeFromAnswers(interview, randomHome(seed), '2026-11-25')),
);

/** Every size of every kind in both ways, weighed one by one: nothing is left out for its price. */
function everything({ home, world }: Case): Weighed[] {
  return [asUsual(home), thriftily(home)].flatMap((living) => {
    if (living === null) return [];
    const by = weighingOf(living.home, allKinds(home, world, widths));
    const odds = new SizeOdds(living.home, world, hardestSeason(home));
    return allKinds(living.home, world, widths)
      .flatMap((kind) => candidatesOf(living, kind))
      .map((one) => ({ ...one, value: worthOf(one, by, odds) }));
  });
}

const figures = ({ devices, odds, full, long, share }: Value) => [
  devices ?? 0,
  odds,
  Number(full),
  Number(long),
  share,
];

/** By hand, place after place: the first figure that differs decides. */
function atLeast(a: Value, b: Value): boolean {
  const [x, y] = [figures(a), figures(b)];
  const at = x.findIndex((one, i) => one !== y[i]);
  return at < 0 || x[at]! > y[at]!;
}

const cheapestEnough = ({ ranked }: Case) => ranked.all.find(isEnough);

describe('what each dollar buys', () => {
  test('holds lists of some length, and homes for which something is enough', () => {
    expect(cases.filter(({ ranked }) => ranked.all.length > 3).length).toBeGreaterThan(8);
    expect(cases.filter((one) => cheapestEnough(one) !== undefined).length).toBeGreaterThan(5);
  });

  test.each(cases.map((one, i) => [SEEDS[i], one] as const))(
    'nothing beats what is on it, home %i',
    (_, one) => {
      const others = everything(one);
      for (const line of one.ranked.all) {
        const beaten = others.filter(
          (other) =>
            (other.usd < line.usd ||
              (other.usd === line.usd && !atLeast(line.value, other.value))) &&
            atLeast(other.value, line.value) &&
            (other.living.way === 'usual' || line.living.way === 'thrifty' || !isEnough(line)),
        );
        expect(beaten.map(({ usd, counted }) => `${counted.kind} for ${usd}`)).toEqual([]);
      }
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
    for (const { home, world, ranked } of cases) {
      const advice = advise(home, world, allKinds(home, world, widths), size);
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
        const then = caseOf(more, one.world).ranked.chosen!;
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
      const then = cheapestEnough(caseOf(longer, one.world));
      if (then !== undefined) {
        compared += 1;
        expect(then.usd).toBeGreaterThanOrEqual(now.usd);
      }
      for (const load of mayGo(one.home).slice(0, 2)) {
        const less = cheapestEnough(caseOf(withoutLoads(one.home, [load.id]), one.world));
        if (one.ranked.all.length === 0 || less === undefined) continue;
        compared += 1;
        expect(less.usd, `without ${load.id}`).toBeLessThanOrEqual(now.usd);
      }
    }
    expect(compared).toBeGreaterThan(6);
  });
});
