import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Demand, Home } from '../../../src/home/home';
import { seasons } from '../../../src/home/home';
import { neverLessened } from '../../../src/home/loads/never-lessened';
import { livedHome } from '../../../src/home/measures/lived-home';
import { measuresOf, thriftyCost, thriftySum } from '../../../src/home/measures/measures-of';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { answersOf } from '../../households/read-household';
import { randomHome } from '../../random-home';

const made = (answers: Parameters<typeof homeFromAnswers>[1]) =>
  homeFromAnswers(interview, answers, '2026-11-25');

const demos = ['tower-six', 'birch-street', 'mill-lane', 'ridge-road'].map((name) =>
  made(answersOf(name)),
);
const homes: Home[] = [
  ...demos,
  ...Array.from({ length: 120 }, (_, seed) => made(randomHome(9000 + seed))),
];

const ends = ['low', 'value', 'high'] as const;

describe('both ways of living, of 124 homes', () => {
  test('what thrift costs, looked for alone, is what the sum of all measures says', () => {
    const sums = homes.map((home) => thriftySum(home, measuresOf(home)).costUsd);
    expect(homes.map((home) => ends.map((end) => thriftyCost(home)[end]))).toEqual(
      sums.map((sum) => ends.map((end) => sum[end])),
    );
    expect(new Set(sums.map(({ value }) => value)).size).toBeGreaterThan(3);
  });

  test('thrifty never carries more energy, power or start than as usual, at any end of a figure', () => {
    for (const home of homes) {
      const thrifty = livedHome(home, 'thrifty');
      for (const scope of ['must', 'good', 'all'] as const) {
        const [a, b]: Demand[] = [home.demand[scope], thrifty.demand[scope]] as never;
        for (const end of ends) {
          for (const season of seasons) {
            expect(b!.kwhPerDay[season][end]).toBeLessThanOrEqual(a!.kwhPerDay[season][end] + 1e-9);
          }
          expect(b!.runningWatts[end]).toBeLessThanOrEqual(a!.runningWatts[end] + 1e-9);
          expect(b!.startVa[end]).toBeLessThanOrEqual(a!.startVa[end] + 1e-9);
        }
      }
    }
  });

  test('what health or a dry house hangs on draws the same at the same hours', () => {
    let seen = 0;
    for (const home of homes) {
      const { loads } = livedHome(home, 'thrifty');
      for (const load of home.loads.filter(neverLessened)) {
        const lived = loads.find((one) => one.id === load.id)!;
        const { dcFed, ...same } = lived;
        expect(same).toEqual(load);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(50);
  });

  test('a load is on in the hours its shape names, and its shares sum to 1', () => {
    for (const home of homes) {
      for (const load of livedHome(home, 'thrifty').loads) {
        expect(load.shape).toHaveLength(24);
        expect(load.shape.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
      }
    }
  });
});

test('the way there and the way back give the same two homes', () => {
  const [home] = demos as [Home];
  const thrifty = livedHome(home, 'thrifty');
  expect(thrifty.way).toBe('thrifty');
  expect(livedHome(home, 'thrifty')).toBe(thrifty);
  expect(livedHome(thrifty, 'thrifty')).toBe(thrifty);
  expect(livedHome(thrifty, 'usual')).toBe(home);
});

const kwh = (home: Home, id: string) =>
  home.loads.find((load) => load.id === id)?.kwhPerDay.winter.value ?? 0;

test('on the sixth floor a lantern takes the lights and the router has three hours', () => {
  const [home] = demos as [Home];
  const thrifty = livedHome(home, 'thrifty');
  expect(kwh(home, 'lights-led')).toBeGreaterThan(0.3);
  expect(kwh(thrifty, 'lights-led')).toBe(0);
  expect(kwh(thrifty, 'modem-router')).toBeCloseTo(0.02 * 3, 9);
  expect(kwh(thrifty, 'cpap')).toBe(kwh(home, 'cpap'));
  // Insulin is in the refrigerator: it takes no turns.
  expect(thrifty.loads.find((load) => load.id === 'fridge')).toBe(
    home.loads.find((load) => load.id === 'fridge'),
  );
});

test('the router stays on where nobody told of another phone that works', () => {
  const { 'phone-works': _, ...answers } = answersOf('tower-six') as Record<string, string>;
  for (const told of [{}, { 'phone-works': 'neither' }, { 'phone-works': 'not sure' }]) {
    const home = made({ ...answers, ...told } as Answers);
    expect(kwh(livedHome(home, 'thrifty'), 'modem-router')).toBe(kwh(home, 'modem-router'));
  }
});

test('heat is turned down only where a cold room makes nobody ill, and nobody told is nobody known', () => {
  const plain = {
    ...answersOf('birch-street'),
    'people-risk': ['none'],
    'heat-cold': 'neither',
    'medical-devices': ['none'],
  };
  const colder = (told: Record<string, string | string[]>) => {
    const home = made({ ...plain, ...told } as Answers);
    return kwh(livedHome(home, 'thrifty'), 'furnace-gas') < kwh(home, 'furnace-gas');
  };
  expect(colder({})).toBe(true);
  const closing: Record<string, string | string[]>[] = [
    { 'heat-cold': 'cold' },
    { 'heat-cold': 'both' },
    { 'heat-cold': 'not sure' },
    { 'people-risk': ['baby'] },
    { 'people-risk': 'not sure' },
    { 'medical-devices': 'not sure' },
  ];
  for (const told of closing) expect(colder(told)).toBe(false);
});
