import fc from 'fast-check';
import { expect, it } from 'vitest';
import { generatorHoursSurvived } from '../../src/outage/generator-hours-survived';
import { generatorOdds } from '../../src/outage/generator-odds';
import { oddsFromFull } from '../../src/outage/ride-through-odds';
import { always, between, generator, madeUpRecord } from './walk/made-up-system';

const LENGTHS = [12, 24, 72, 168, 336];

it('the odds of an engine alone are those of the hours it survives from every start', () => {
  const seen = { some: 0, none: 0, all: 0, byTimetable: 0 };
  const one = fc.record({
    seed: fc.integer({ min: 1, max: 1e6 }),
    fuelAtStart: fc.double({ min: 1, max: 200, noNaN: true }),
    ratedKw: fc.constantFrom(0.9, 1.3, 4),
    runsByHour: fc.constantFrom(always, always, between(6, 22)),
    years: fc.constantFrom(1, 2),
  });
  fc.assert(
    fc.property(one, ({ seed, years, ...own }) => {
      const loadKw = madeUpRecord(365 * years, seed, 0, 0.8).loadsKw[0]!;
      const input = { loadKw, generator: { ...generator, ...own }, limitHours: 336 };
      const counted = oddsFromFull(generatorHoursSurvived(input), LENGTHS);
      const odds = generatorOdds(input, LENGTHS);
      expect(odds.map(({ hours }) => hours)).toEqual(LENGTHS);
      odds.forEach(({ all, months }, i) => {
        expect(all).toBeCloseTo(counted[i]!.all!, 12);
        months.forEach((share, month) => {
          expect(share).toBeCloseTo(counted[i]!.months[month]!, 12);
        });
        if (own.runsByHour !== always) seen.byTimetable += 1;
        else seen[all === 0 ? 'none' : all === 1 ? 'all' : 'some'] += 1;
      });
    }),
    { seed: 20261125, numRuns: 100 },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(8);
});

it('are sure on piped gas', () => {
  const { loadsKw } = madeUpRecord(365, 3, 0, 0.8);
  const piped = { ...generator, runsByHour: always, fuelAtStart: Infinity };
  const odds = generatorOdds({ loadKw: loadsKw[0]!, generator: piped, limitHours: 336 }, LENGTHS);
  expect(odds.map(({ all }) => all)).toEqual([1, 1, 1, 1, 1]);
});
