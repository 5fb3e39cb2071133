import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MONTH_STARTS, monthOfHour } from '../../src/outage/month-of-hour';
import { quantileInPlace } from '../../src/outage/quantile';
import { seasonHours, WHOLE_YEAR } from '../../src/outage/season';
import { sizeForShareOfOutages, sizeForShareOfYears } from '../../src/outage/size-by-odds';

const winter = { firstMonth: 11, months: 3 };

describe('months and seasons', () => {
  it('puts the hours of a year into calendar months without a leap day', () => {
    expect(MONTH_STARTS.at(-1)).toBe(365 * 24);
    expect([0, 743, 744, 8759, 8760, 2 * 8760 - 1].map(monthOfHour)).toEqual([0, 0, 1, 11, 0, 11]);
  });

  it('lets a season run over the turn of the year', () => {
    expect(seasonHours(winter)).toEqual({ first: 8016, count: (31 + 31 + 28) * 24 });
    expect(seasonHours(WHOLE_YEAR)).toEqual({ first: 0, count: 8760 });
    expect(() => seasonHours({ firstMonth: 12, months: 1 })).toThrow(/0 to 11: 12/);
    expect(() => seasonHours({ firstMonth: 0, months: 13 })).toThrow(/1 to 12 months: 13/);
  });
});

describe('the least value that covers a share', () => {
  it('is the one found by sorting', () => {
    const values = fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(values, fc.integer({ min: 1, max: 100 }), (list, percent) => {
        const got = quantileInPlace(Float64Array.from(list), percent / 100)!;
        const covered = list.filter((value) => value <= got).length;
        const under = list.filter((value) => value < got).length;
        expect(covered * 100).toBeGreaterThanOrEqual(percent * list.length);
        expect(under * 100).toBeLessThan(percent * list.length);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('copes with many equal values and with Infinity, and has none for none', () => {
    const equal = new Float64Array(20_000).fill(3);
    expect(quantileInPlace(equal, 0.9)).toBe(3);
    expect(quantileInPlace(Float64Array.of(Infinity, 1, Infinity), 0.5)).toBe(Infinity);
    expect(quantileInPlace(new Float64Array(0), 0.5)).toBeNull();
    expect(() => quantileInPlace(equal, 0)).toThrow(RangeError);
  });
});

describe('two measures of a battery size', () => {
  /** Ten years that need 1 kWh at every hour, but `bad` kWh at the given hours of the record. */
  const record = (bad: Record<number, number>, years = 10) => {
    const needed = new Float64Array(years * 8760).fill(1);
    for (const [hour, kwh] of Object.entries(bad)) needed[Number(hour)] = kwh;
    return needed;
  };

  it('ignores one bad hour in ten winters when counting outages, not when counting winters', () => {
    // one hour in 2 of the 10 Januaries: far under 1 outage in 10, but 2 winters in 10
    const needed = record({ 100: 20, [3 * 8760 + 50]: 30 });
    expect(sizeForShareOfOutages(needed, winter, 0.9)).toBe(1);
    expect(sizeForShareOfYears(needed, winter, 0.8)).toBe(1);
    expect(sizeForShareOfYears(needed, winter, 0.9)).toBe(20);
    expect(sizeForShareOfYears(needed, winter, 1)).toBe(30);
  });

  it('keeps a December with the January that follows it, the last with the first', () => {
    const lastDecember = 9 * 8760 + 8100;
    const needed = record({ 100: 20, [lastDecember]: 30 });
    expect(sizeForShareOfYears(needed, winter, 0.9)).toBe(1); // one winter, hit twice
    expect(sizeForShareOfYears(needed, WHOLE_YEAR, 0.9)).toBe(20); // two calendar years
  });

  it('never sizes by years below the size by outages at the same share', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 5, max: 100 }), (seed, percent) => {
        let state = seed;
        const needed = Float64Array.from({ length: 3 * 8760 }, () => {
          state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
          return state / 2 ** 32;
        });
        const outages = sizeForShareOfOutages(needed, winter, percent / 100)!;
        expect(sizeForShareOfYears(needed, winter, percent / 100)!).toBeGreaterThanOrEqual(outages);
      }),
      { seed: 20261125, numRuns: 30 },
    );
  });

  it('has no size for less than a year of hours', () => {
    expect(sizeForShareOfOutages(new Float64Array(100), winter, 0.9)).toBeNull();
    expect(sizeForShareOfYears(new Float64Array(100), winter, 0.9)).toBeNull();
  });
});
