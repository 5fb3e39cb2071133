import { expect, test } from 'vitest';
import { carriedHours } from '../../src/outage/expected-outages';
import { limitedMeanLength } from '../../src/physics/limited-mean-length';

const two = { timesPerYear: 2, hoursPerYear: 12 };

test('two outages of 6 h on the mean and a source of 6 h: less than 12 h, for the long ones outlast it', () => {
  const hours = carriedHours({ ...two, lastsHours: 6 });
  expect(hours).toBeCloseTo(2 * limitedMeanLength({ hours: 6, meanHours: 6, sigma: 1.35 }), 9);
  // By hand: z = sigma / 2 = 0.675, so 2 x (6 x Q(0.675) + 6 x Q(0.675)) = 24 x 0.2498 (normal table: Q(0.67) 0.2514, Q(0.68) 0.2483).
  expect(hours).toBeCloseTo(24 * 0.24985, 2);
});

test('a source without end carries them all, none carries none, and no outages come to none', () => {
  expect(carriedHours({ ...two, lastsHours: null })).toBe(12);
  expect(carriedHours({ ...two, lastsHours: 0 })).toBe(0);
  expect(carriedHours({ timesPerYear: 0, hoursPerYear: 0, lastsHours: 5 })).toBe(0);
});
