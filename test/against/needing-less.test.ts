import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { livedHome } from '../../src/home/measures/lived-home';
import { onHours } from '../../src/home/measures/turns-of';
import { leftOfDegrees } from '../../src/home/measures/warm-and-cool';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { foodSafety } from '../../src/tables/food-safety';
import { householdLoad } from '../../src/tables/household-loads';
import { measureRow } from '../../src/tables/measures';
import { namedValue } from '../../src/tables/named-values';
import { answersOf } from '../households/read-household';
import { randomHome } from '../random-home';

describe('end uses, against published figures', () => {
  test('a modem and router: 8.3 billion kWh a year in 88 million homes (NRDC and Ecova, 2013) is 10.8 W', () => {
    const watts = (8.3e9 / 88e6 / 8760) * 1000;
    expect(watts).toBeCloseTo(10.8, 1);
    const [low, likely, high] = householdLoad('modem-router').runningWatts;
    expect(watts).toBeGreaterThan(low);
    expect(watts).toBeLessThan(high);
    // Ours is the careful side: a plan on the published mean would have the router on for longer.
    expect(likely).toBeGreaterThan(watts);
  });

  test('a phone: the same report has network equipment use 30 times as much as a charger, 8.6 Wh a day', () => {
    const wattHours = ((8.3e9 / 88e6) * 1000) / 30 / 365;
    expect(wattHours).toBeCloseTo(8.6, 1);
    const ours = measureRow('phones-once').wattHours!;
    expect(ours / wattHours).toBeGreaterThan(1);
    expect(ours / wattHours).toBeLessThan(2.5);
  });

  test('7 to 10 F lower for 8 h a day saves up to 10 % of heat (US Department of Energy, thermostats)', () => {
    // A heating season of 35 to 40 F outdoors on the mean, as over most of the country; 8 of 24 hours.
    const saved = (changeF: number, dayF: number) => (8 / 24) * (1 - leftOfDegrees(changeF, dayF));
    expect(saved(7, 40)).toBeGreaterThan(0.07);
    expect(saved(8.5, 37)).toBeGreaterThan(0.09);
    expect(saved(8.5, 37)).toBeLessThan(0.11);
    expect(saved(10, 40)).toBeLessThan(0.14);
  });

  test('sealing and insulating saves 15 % of heating and cooling on average (EPA, methodology page)', () => {
    expect(1 - measureRow('insulation').share![1]).toBeCloseTo(0.15, 9);
    expect(measureRow('insulation').standing).toBe('published');
  });

  test('a laptop is 50 W and a desk computer with its screen 120 + 150 W (DOE wattage list)', () => {
    const laptop = householdLoad('laptop').runningWatts;
    expect(laptop[0]).toBeLessThanOrEqual(50);
    expect(laptop[2]).toBeGreaterThanOrEqual(50);
    expect(householdLoad('desktop').runningWatts[2]).toBe(120 + 150);
  });
});

describe('cold food in turns, against the limits of USDA', () => {
  const names = ['birch-street', 'mill-lane', 'ridge-road'];
  const homes = [
    ...names.map((name) => answersOf(name)),
    ...Array.from({ length: 60 }, (_, seed) => randomHome(7000 + seed)),
  ].map((answers) => homeFromAnswers(interview, answers, '2026-11-25'));

  /** Longest time without power, h: round the clock. */
  const longestOff = (shape: readonly number[]) => {
    let [longest, off] = [0, 0];
    for (let hour = 0; hour < 48; hour++) {
      off = shape[hour % 24]! > 0 ? 0 : off + 1;
      longest = Math.max(longest, off);
    }
    return longest;
  };

  test.each([
    ['fridge', 'closed-fridge', 4],
    ['freezer-chest', 'half-full-freezer', 24],
    ['freezer-chest', 'full-freezer', 48],
  ] as const)('the %s is never off longer than a %s stays safe, %i h', (id, limit, hours) => {
    expect(namedValue(foodSafety, limit).value).toBe(hours);
    let turns = 0;
    for (const home of homes) {
      const load = livedHome(home, 'thrifty').loads.find((one) => one.id === id);
      if (load === undefined) continue;
      expect(longestOff(load.shape)).toBeLessThanOrEqual(hours);
      if (onHours(load).length > 0) turns++;
    }
    expect(turns).toBeGreaterThan(10);
  });

  test('in its hours the compressor can move the heat of the day: 8 h of power for 1.2 kWh at 150 W', () => {
    for (const home of homes) {
      for (const load of livedHome(home, 'thrifty').loads) {
        if (load.id !== 'fridge' && load.id !== 'freezer-chest') continue;
        const hours = load.shape.filter((share) => share > 0).length;
        if (hours === 24) continue;
        for (const season of home.goalSeasons) {
          const can = (hours * load.runningWatts.value) / 1000;
          expect(load.kwhPerDay[season].value).toBeLessThanOrEqual(can + 1e-9);
        }
      }
    }
  });
});
