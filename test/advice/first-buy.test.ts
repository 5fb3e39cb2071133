import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { firstBuy } from '../../src/advice/first-buy';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { english } from '../../src/words/en';
import { answersOf, planOf } from '../households/read-household';
import { randomHome } from '../random-home';
import { emptyTally, tryPart } from '../soak/part';
import { agree } from '../soak/parts/agree';
import { caseOf } from './list-case';

/** A home with so much money now and so much later: what is advised, and what comes first. */
function firstOf(name: string, now: number, later: number, told: Answers = {}) {
  const answers = { ...answersOf(name), ...told, 'budget-now': now, 'budget-later': later };
  const home = homeFromAnswers(interview, answers, '2026-11-25');
  const { ranked } = caseOf(home);
  return { home, chosen: ranked.chosen!, first: firstBuy(home, ranked) };
}

describe('a purchase above the money of now', () => {
  const { chosen, first } = firstOf('birch-street', 1000, 4000);

  test('begins with the part that works by itself: the same generator, on cords', () => {
    expect(chosen.counted.kind).toBe('engine-inlet');
    const { part, nowUsd, restUsd } = first!;
    expect(part!.kind).toBe('engine-cords');
    expect(part!.usd).toBeLessThanOrEqual(nowUsd);
    const generator = part!.parts.find((one) => one.equipmentClass === 'portable-engine')!;
    expect(chosen.sized.route.parts).toContainEqual(generator);
    expect(restUsd).toBeCloseTo(chosen.usd - generator.costUsd.value, 6);
    expect(english.firstBuy(first!)).toMatch(
      / First, with the \$1,000 you have now: the portable generator with cords, about \$\d+, which stays a part of it\./,
    );
  });

  test('and waits whole where no part of it is of use alone, with the measures of thrift before it', () => {
    const plan = planOf('mill-lane');
    const { advice } = plan;
    const { usd } = advice.list[advice.advised!]!;
    expect(advice.firstBuy).toMatchObject({ nowUsd: 500, shortUsd: usd - 500, part: null });
    expect(advice.firstBuy!.thriftUsd).toBe(plan.waysOfLiving.thriftyUsd.value);
    const buy = plan.nextSteps.find(({ id }) => id === 'buy');
    expect(buy).toMatchObject({ waitsUsd: usd - 500 });
    expect(english.step(buy!, plan.home)).toContain('and $540 more is there, buy:');
  });

  test('a smaller pack comes first, and a second beside it later', () => {
    const { chosen: pack, first: now } = firstOf('elm-row', 900, 6000);
    expect(pack.counted.kind).toBe('power-pack');
    const { part, restUsd } = now!;
    expect(part!.kind).toBe('power-pack');
    expect(part!.packKwh).toBeLessThan(pack.counted.nameplateKwh!);
    expect(part!.packKwh).toBeGreaterThan(0);
    expect(part!.usd + restUsd).toBeCloseTo(pack.usd, 6);
    expect(english.firstBuy(now!)).toMatch(
      /First, with the \$900 you have now: one of [\d.]+ kWh, about \$[\d,]+\. A second beside it, about \$[\d,]+, can wait/,
    );
  });

  test('what waits whole says why, and that a low price fits where it does', () => {
    const { chosen: whole, first: now } = firstOf('ridge-road', 3000, 4000);
    expect(now!.part).toBeNull();
    const { low } = whole.sized.route.costUsd;
    expect(low).toBeLessThanOrEqual(3000);
    expect(now!.lowUsd).toBeCloseTo(low + whole.living.extraUsd, 6);
    const says = english.firstBuy(now!);
    expect(says).toContain('so all of it waits.');
    expect(says).toContain('would fit: ask now.');
    // Where even the low end is above it, nothing of the kind is said.
    const { first: less } = firstOf('ridge-road', 1000, 6000);
    expect(less!.lowUsd).toBeNull();
    expect(english.firstBuy(less!)).not.toContain('low quote');
  });

  test('what is all there already is not bought first', () => {
    const { chosen: inlet, first: now } = firstOf('birch-street', 50, 4000, {
      'own-sources': ['engine-portable'],
      'engine-watts': 7500,
      'engine-volts': 'v240',
      'engine-kind': 'ordinary',
      'engine-fuel': 'gasoline',
      cords: 'heavy',
    });
    expect(inlet.counted.kind).toBe('engine-inlet');
    expect(inlet.usd).toBeGreaterThan(50);
    expect(now!.part).toBeNull();
    expect(now!.restUsd).toBe(inlet.usd);
  });

  test('is bought at once where the money of now does, or none is for later', () => {
    expect(firstOf('birch-street', 5000, 4000).first).toBeNull();
    expect(firstOf('birch-street', 5000, 0).first).toBeNull();
  });
});

test('what comes first asks for no more fuel to be stored than the whole does', async () => {
  const tally = emptyTally();
  // Here cords with full cans would be worth most of what is a part.
  await tryPart(agree, 198, tally);
  expect(tally.faults).toEqual([]);
  expect(tally.spoke['one count of gallons']).toBe(1);
});

/** Money in all, of which so much of the price of what is advised is there now. */
const IN_ALL = 60000;
const NOW = 0.75;

test('of homes made up by chance: what comes first costs no more than there is now, and the rest makes it whole', () => {
  let parts = 0;
  const homes = [
    answersOf('birch-street'),
    ...Array.from({ length: 15 }, (_, i) => randomHome(i + 1)),
  ];
  for (const answers of homes) {
    const toldNow = (now: number) =>
      homeFromAnswers(
        interview,
        { ...answers, 'budget-now': now, 'budget-later': IN_ALL - now },
        '2026-11-25',
      );
    const { ranked } = caseOf(toldNow(IN_ALL));
    const usd = ranked.chosen?.usd ?? 0;
    const first = firstBuy(toldNow(Math.floor(NOW * usd)), ranked);
    expect(first === null).toBe(usd === 0 || ranked.chosen!.counted.carries.length === 0);
    if (first === null) continue;
    expect(first.shortUsd).toBeCloseTo(usd - first.nowUsd, 6);
    if (first.part === null) continue;
    parts++;
    expect(first.part.usd).toBeLessThanOrEqual(first.nowUsd);
    expect(first.part.parts.some(({ costUsd }) => costUsd.value > 0)).toBe(true);
    expect(first.part.usd + first.restUsd).toBeLessThanOrEqual(1.1 * usd);
    expect(first.part.usd + first.restUsd).toBeGreaterThanOrEqual(
      ranked.chosen!.sized.route.costUsd.value - 1,
    );
  }
  expect(parts).toBeGreaterThan(0);
});
