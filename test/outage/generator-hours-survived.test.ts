import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatorHoursSurvived } from '../../src/outage/generator-hours-survived';
import type { WalkGenerator, WalkSystem } from '../../src/outage/walk/system';
import { walkOutage } from '../../src/outage/walk/walk';
import { always, between, generator, madeUpRecord } from './walk/made-up-system';

const alone = (of: WalkGenerator): WalkSystem => ({
  battery: null,
  generator: of,
  vehicle: null,
  ladder: [],
});

describe('hours an engine alone lasts from every start', () => {
  it('are fuel over burn against a flat load', () => {
    // 10 gal at 0.25 + 0.11 x 1 kW = 0.36 gal an hour: 27.8 hours, of which 27 are whole.
    const loadKw = new Float64Array(240).fill(1);
    const hours = generatorHoursSurvived({
      loadKw,
      generator: { ...generator, runsByHour: always },
      limitHours: 336,
    });
    expect(new Set(hours)).toEqual(new Set([Math.floor(10 / 0.36)]));
  });

  it('are none where the load is more than it gives, and have no end on piped gas', () => {
    const loadKw = new Float64Array(48).fill(1);
    loadKw[30] = 4.5;
    const piped = { ...generator, runsByHour: always, fuelAtStart: Infinity };
    const hours = generatorHoursSurvived({ loadKw, generator: piped, limitHours: 24 });
    expect(hours[30]).toBe(0);
    expect(hours[29]).toBe(1);
    expect(hours[31]).toBe(24);
  });

  it('miss fuel first in an hour that wants something', () => {
    // The last of 0.5 gal goes at no load in the second idle hour; the load comes back in the fifth.
    const loadKw = new Float64Array(24);
    loadKw[5] = 1;
    const small = { ...generator, runsByHour: always, fuelAtStart: 0.5 };
    expect(generatorHoursSurvived({ loadKw, generator: small, limitHours: 48 })[0]).toBe(5);
  });

  it('are what a walk hour by hour finds, from every start hour of two years', () => {
    const record = madeUpRecord(2 * 365, 7, 0, 0.9);
    const loadKw = record.loadsKw[0]!;
    const must = { loadsKw: [loadKw], solarKw: record.solarKw };
    const all = { ...generator, runsByHour: always, fuelAtStart: 25 };
    const hours = generatorHoursSurvived({ loadKw, generator: all, limitHours: 336 });
    let differ = 0;
    for (let start = 0; start < loadKw.length; start++) {
      const walked = walkOutage({
        system: alone(all),
        record: must,
        start,
        outageHours: 336,
        startKwh: 0,
        untilFailure: true,
      });
      if (walked.hoursServed !== hours[start]) differ += 1;
    }
    expect(differ).toBe(0);
    expect(new Set(hours).size).toBeGreaterThan(3);
  });

  it('agree with the walk for any fuel, size and timetable', () => {
    const one = fc.record({
      seed: fc.integer({ min: 1, max: 1e6 }),
      fuelAtStart: fc.double({ min: 0, max: 40, noNaN: true }),
      ratedKw: fc.double({ min: 0.3, max: 3, noNaN: true }),
      from: fc.integer({ min: 0, max: 12 }),
      upTo: fc.integer({ min: 12, max: 24 }),
      limitHours: fc.integer({ min: 1, max: 200 }),
    });
    fc.assert(
      fc.property(one, ({ seed, fuelAtStart, ratedKw, from, upTo, limitHours }) => {
        const { loadsKw, solarKw } = madeUpRecord(20, seed, 0, 0.8);
        const loadKw = loadsKw[1]!;
        const it = { ...generator, fuelAtStart, ratedKw, runsByHour: between(from, upTo) };
        const hours = generatorHoursSurvived({ loadKw, generator: it, limitHours });
        const walks = hours.map((_, start) => {
          const walked = walkOutage({
            system: alone(it),
            record: { loadsKw: [loadKw], solarKw },
            start,
            outageHours: limitHours,
            startKwh: 0,
            untilFailure: true,
          });
          return walked.hoursServed;
        });
        expect(hours).toEqual(walks);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('refuse refills and a record of broken days', () => {
    const loadKw = new Float64Array(24);
    const input = { loadKw, generator: { ...generator, refillEveryHours: 48 }, limitHours: 24 };
    expect(() => generatorHoursSurvived(input)).toThrow(/must be walked/);
    expect(() =>
      generatorHoursSurvived({ ...input, generator, loadKw: new Float64Array(25) }),
    ).toThrow(/whole days: 25 h/);
  });
});
