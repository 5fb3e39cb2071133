import fc from 'fast-check';
import { expect, test } from 'vitest';
import { monthCurve, monthMean } from '../../../src/physics/weather/month-curve';

test('the curve keeps every monthly mean', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -40, max: 40, noNaN: true }), { minLength: 12, maxLength: 12 }),
      (means) => {
        const curve = monthCurve(means);
        for (let m = 0; m < 12; m++) expect(monthMean(curve, m)).toBeCloseTo(means[m]!, 6);
      },
    ),
    { seed: 20261125 },
  );
});

test('a year of one temperature is flat', () => {
  expect(monthCurve(new Array(12).fill(5)).every((c) => Math.abs(c - 5) < 1e-9)).toBe(true);
});
