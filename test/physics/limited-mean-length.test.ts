import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitedMeanLength } from '../../src/physics/limited-mean-length';
import { chanceLonger } from '../../src/physics/lognormal-length';

describe('the mean of the shorter of a lognormal length and some hours', () => {
  /** E[min(T, h)] is the area under the chance of being longer, up to h: 40,000 trapezoids. */
  const area = (hours: number, meanHours: number, sigma: number) => {
    const steps = 40_000;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const [a, b] = [(hours * i) / steps, (hours * (i + 1)) / steps];
      const at = (t: number) => chanceLonger({ hours: t, meanHours, sigma });
      sum += ((at(a) + at(b)) / 2) * (b - a);
    }
    return sum;
  };

  test.each([
    [2, 2, 1.35],
    [10, 2, 1.35],
    [10, 12, 1.35],
    [48, 12, 1.7],
    [6, 6, 1],
  ])('of %i h about a mean of %i h is the area under the tail', (hours, meanHours, sigma) => {
    const by = limitedMeanLength({ hours, meanHours, sigma });
    expect(by).toBeCloseTo(area(hours, meanHours, sigma), 3);
  });

  test('by the normal table: mean e^0.5, sigma 1 and 1 h, so z is 0: e^0.5 x Q(1) + 1 x 0.5', () => {
    // Q(1) = 0.15866, printed in every table of the normal distribution.
    const by = limitedMeanLength({ hours: 1, meanHours: Math.exp(0.5), sigma: 1 });
    expect(by).toBeCloseTo(Math.exp(0.5) * 0.15866 + 0.5, 4);
  });

  test('is nothing for no hours, the mean for a year, and never more than either', () => {
    expect(limitedMeanLength({ hours: 0, meanHours: 5, sigma: 1.35 })).toBe(0);
    expect(limitedMeanLength({ hours: 8760, meanHours: 5, sigma: 1.35 })).toBeCloseTo(5, 3);
    const some = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(some, some, (hours, meanHours) => {
        const by = limitedMeanLength({ hours, meanHours, sigma: 1.35 });
        expect(by).toBeLessThanOrEqual(Math.min(hours, meanHours) + 1e-4);
        expect(by).toBeGreaterThan(0);
      }),
    );
  });

  test('refuses what is no length', () => {
    expect(() => limitedMeanLength({ hours: -1, meanHours: 1, sigma: 1 })).toThrow(RangeError);
    expect(() => limitedMeanLength({ hours: 1, meanHours: 1, sigma: 0 })).toThrow(RangeError);
  });
});
