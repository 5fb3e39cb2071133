import { expect, test } from 'vitest';
import { normalShare } from '../../../src/physics/weather/normal-share';
import { seededRandom } from '../../../src/physics/weather/seeded-random';

test('the same seed repeats, neighboring seeds do not', () => {
  const draw = (seed: number) => {
    const random = seededRandom(seed);
    return Array.from({ length: 5 }, () => random.uniform());
  };
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1)).not.toEqual(draw(2));
});

// Standard errors of 100,000 draws: 0.003 for the mean, 0.002 for the spread; four of them allowed.
test('normal draws have mean 0, spread 1, and the shares of the normal law', () => {
  const random = seededRandom(20261125);
  const draws = Array.from({ length: 100_000 }, () => random.normal());
  const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
  const spread = Math.sqrt(draws.reduce((sum, x) => sum + x * x, 0) / draws.length);
  expect(Math.abs(mean)).toBeLessThan(0.0127);
  expect(Math.abs(spread - 1)).toBeLessThan(0.009);
  for (const x of [-2, -1, 0, 1, 2]) {
    const below = draws.filter((draw) => draw < x).length / draws.length;
    expect(Math.abs(below - normalShare(x))).toBeLessThan(0.0065);
  }
});

// Abramowitz & Stegun 1964, Table 26.1.
test.each([
  [0, 0.5],
  [1, 0.8413447461],
  [-1, 0.1586552539],
  [1.96, 0.9750021049],
  [3, 0.998650102],
])('the normal share below %f is %f', (x, share) => {
  expect(normalShare(x)).toBeCloseTo(share, 6);
});
