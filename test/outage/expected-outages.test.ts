import { describe, expect, it } from 'vitest';
import {
  chanceOfLongOutage,
  outageOutlook,
  yearlyOutages,
} from '../../src/outage/expected-outages';
import { chanceOfNone, learn, meanRate, priorRate, rateRange } from '../../src/outage/outage-rate';

describe('how often, learned from years lived', () => {
  it('starts at the average and moves to what was seen as the years grow', () => {
    const prior = priorRate(0.5);
    expect(meanRate(prior)).toBe(0.5);
    // by hand: (1 + 6) in (2 + 3) years
    expect(meanRate(learn(prior, { count: 6, years: 3 }))).toBeCloseTo(7 / 5, 12);
    expect(meanRate(learn(prior, { count: 0, years: 8 }))).toBeCloseTo(1 / 10, 12);
    expect(meanRate(learn(prior, { count: 3000, years: 1000 }))).toBeCloseTo(3, 1);
  });

  it('has the range of the exponential law for shape 1: a tenth of the mean to 2.3 times it', () => {
    const { low, high } = rateRange(priorRate(1));
    expect(Math.abs(low / -Math.log(0.9) - 1)).toBeLessThan(0.07);
    expect(Math.abs(high / Math.log(10) - 1)).toBeLessThan(0.02);
  });

  it('gives no outage the chance of a Poisson count over all rates', () => {
    // by adding up exp(-rate x 0.3 x 10) over the gamma density of shape 2, 4 years
    const rate = { shape: 2, years: 4 };
    let sum = 0;
    for (let x = 0.0005; x < 20; x += 0.001) sum += 16 * x * Math.exp(-4 * x - 3 * x) * 0.001;
    expect(chanceOfNone(rate, 0.3, 10)).toBeCloseTo(sum, 5);
  });
});

describe('outages to expect at a home', () => {
  it('are the nation where no state is known, ordinary and major apart', () => {
    const outlook = outageOutlook(null);
    const { ordinary, major } = yearlyOutages(outlook);
    expect(outlook.fromState).toBe(false);
    expect(ordinary.times.value).toBeCloseTo(1.03, 2);
    expect(ordinary.hours.value).toBeCloseTo(1.96, 2);
    expect(major.hours.value).toBeCloseTo(3.68, 2);
    for (const { times, hours } of [ordinary, major]) {
      expect(times.low).toBeLessThan(times.value);
      expect(times.high).toBeGreaterThan(times.value);
      expect(hours.high).toBeGreaterThan(4 * hours.low);
    }
  });

  it('are more in Maine than in New Jersey, and the nation in a place not in the table', () => {
    const hours = (state: string) => yearlyOutages(outageOutlook(state)).major.hours.value;
    // two great storms stand in the ten years of New Jersey
    expect(hours('ME')).toBeGreaterThan(2 * hours('NJ'));
    expect(outageOutlook('ME').fromState).toBe(true);
    expect(outageOutlook('TX').fromState).toBe(true);
    expect(outageOutlook('PR')).toEqual(outageOutlook(null));
  });

  it('shift by what the household has lived through', () => {
    const base = yearlyOutages(outageOutlook(null));
    const often = yearlyOutages(outageOutlook(null, { timesPerYear: 6 }));
    const never = yearlyOutages(outageOutlook(null, { timesPerYear: 0, longestHours: 0 }));
    expect(often.ordinary.times.value).toBeGreaterThan(3);
    expect(often.major).toEqual(base.major);
    expect(never.ordinary.times.value).toBeLessThan(base.ordinary.times.value);
    expect(never.major.times.value).toBeLessThan(base.major.times.value);
    const storm = outageOutlook(null, { longestHours: 96 });
    // 12 h twice and 96 h once, on the scale of ratios
    expect(storm.major.meanHours).toBeCloseTo((11.98 ** 2 * 96) ** (1 / 3), 1);
    expect(meanRate(storm.major.rate)).toBeGreaterThan(
      meanRate(outageOutlook(null, { longestHours: 2 }).major.rate),
    );
    expect(() => outageOutlook(null, { timesPerYear: -1 })).toThrow(/-1 a year/);
  });

  it('give a chance of a long one that falls with length, grows with years, and is marked weak', () => {
    const outlook = outageOutlook(null);
    const chances = [1, 12, 24, 72, 168, 336].map((hours) =>
      chanceOfLongOutage(outlook, { hours }),
    );
    chances.forEach((chance, i) => {
      expect(chance.evidence).toBe('weak');
      expect(0 <= chance.low && chance.low <= chance.value).toBe(true);
      expect(chance.value <= chance.high && chance.high <= 1).toBe(true);
      if (i > 0) expect(chance.value).toBeLessThan(chances[i - 1]!.value);
    });
    expect(chances[2]!.high - chances[2]!.low).toBeGreaterThan(0.3);
    const year = chanceOfLongOutage(outlook, { hours: 24, years: 1 });
    expect(year.value).toBeLessThan(chances[2]!.value);
    expect(chanceOfLongOutage(outlook, { hours: 0 }).value).toBeGreaterThan(0.9);
  });
});
