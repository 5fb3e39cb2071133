import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { hourlyLoadKw } from '../../src/home/weather/hourly-load';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { weatherAssumptions } from '../../src/plan/sureness/weather-assumptions';
import { answersOf } from '../households/read-household';

const homeOf = (changed: Record<string, string | number> = {}) =>
  homeFromAnswers(interview, { ...answersOf('ridge-road'), ...changed }, '2026-11-25');
const wellOf = (home: ReturnType<typeof homeOf>) => home.loads.find(({ id }) => id === 'well')!;

describe('a water pump', () => {
  test.each<Record<string, string | number>>([
    {},
    { 'well-minutes': 40 },
    { 'well-volts': 'v120' },
  ])(
    'with %j is likely to run the same in every season, with the year-round shape of its table row',
    (changed) => {
      const { winter, mild, summer } = wellOf(homeOf(changed)).kwhPerDay;
      expect([mild.value, summer.value]).toEqual([winter.value, winter.value]);
      expect(summer.high).toBeGreaterThanOrEqual(winter.high);
    },
  );

  test('draws by the hour of the day and not by the temperature', () => {
    const home = homeOf();
    const at = (airC: number) =>
      hourlyLoadKw([wellOf(home)], new Float32Array(8760).fill(airC), home.site.place.climate);
    const [cold, hot] = [at(-20), at(38)];
    expect(hot).toEqual(cold);
    // ANSI/RESNET/ICC 301-2022 Addendum C: the pump takes 0.086 of its day at 9 pm and 0.015 at 3 am.
    expect(cold[21]! / cold[3]!).toBeCloseTo(0.086 / 0.015, 6);
  });

  test('and a heat pump say what was taken for granted; a home without them does not', () => {
    const says = (home: ReturnType<typeof homeOf>) =>
      weatherAssumptions(home).map((one) => one.code);
    const noRoof = { 'roof-face': 'none' };
    expect(says(homeOf(noRoof))).toEqual(['well-same-all-year', 'heat-pump-one-speed']);
    expect(
      says(homeOf({ ...noRoof, 'heat-main': 'wood', 'cool-main': 'none', 'water-source': 'town' })),
    ).toEqual([]);
    expect(says(homeOf({ sump: 'one' }))).toContain('sump-any-day');
  });
});
