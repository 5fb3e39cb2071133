import { describe, expect, test } from 'vitest';
import { bendtLaw, clearnessAt } from '../../src/physics/weather/bendt-law';

// Bendt, Collares-Pereira & Rabl 1981 (Duffie & Beckman, 4th ed., 2.9.4-2.9.7): the growth by Herzog's
// published fit, g = -1.498 + [1.184 x - 27.182 exp(-1.5 x)] / (kmax - kmin), x = (kmax - kmin)/(kmax - K).
function herzogFit(mean: number): { gamma: number; max: number } {
  const max = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8;
  const x = (max - 0.05) / (max - mean);
  return { max, gamma: -1.498 + (1.184 * x - 27.182 * Math.exp(-1.5 * x)) / (max - 0.05) };
}

describe.each([0.3, 0.4, 0.5, 0.6, 0.7])('at a mean clearness of %f', (mean) => {
  const law = bendtLaw(mean)!;

  test('the solved growth lies within 0.2 of the published fit', () => {
    const fit = herzogFit(mean);
    expect(law.max).toBeCloseTo(fit.max, 10);
    expect(Math.abs(law.gamma - fit.gamma)).toBeLessThan(0.2);
  });

  test('the published distribution function gives back the share at every clearness', () => {
    const grow = (k: number) => Math.exp(law.gamma * k);
    for (const share of [0.05, 0.25, 0.5, 0.75, 0.95]) {
      const k = clearnessAt(law, share);
      expect((grow(0.05) - grow(k)) / (grow(0.05) - grow(law.max))).toBeCloseTo(share, 8);
    }
  });

  test('mean and spread of ten thousand even shares are the law’s', () => {
    let [sum, squares] = [0, 0];
    for (let i = 0; i < 10_000; i++) {
      const k = clearnessAt(law, (i + 0.5) / 10_000);
      sum += k;
      squares += k * k;
    }
    expect(sum / 10_000).toBeCloseTo(mean, 5);
    expect(Math.sqrt(squares / 10_000 - (sum / 10_000) ** 2)).toBeCloseTo(law.spread, 4);
  });
});

test('a month without sun, or with more than the law can hold, has no law', () => {
  expect(bendtLaw(0)).toBeNull();
  expect(bendtLaw(0.99)).toBeNull();
});
