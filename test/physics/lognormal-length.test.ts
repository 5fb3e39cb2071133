import { describe, expect, it } from 'vitest';
import { chanceLonger } from '../../src/physics/lognormal-length';
import { normalTail } from '../../src/physics/normal-tail';

describe('the tail of a normal number', () => {
  it('is the printed one (Abramowitz & Stegun 1964, Table 26.1)', () => {
    const printed: [number, number][] = [
      [0, 0.5],
      [1, 0.1586552539],
      [1.2816, 0.1],
      [2, 0.0227501319],
      [3, 0.001349898],
    ];
    // the formula's own error is 1.5e-7 in erf; 1.2816 is rounded
    for (const [z, tail] of printed) expect(Math.abs(normalTail(z) - tail)).toBeLessThan(1e-5);
    expect(normalTail(-1) + normalTail(1)).toBeCloseTo(1, 12);
    expect(() => normalTail(Number.NaN)).toThrow(/NaN/);
  });
});

describe('the chance that an outage is longer', () => {
  /** The same chance by adding up the density in small steps of ln h. */
  function bySum(hours: number, meanHours: number, sigma: number): number {
    const mu = Math.log(meanHours) - sigma ** 2 / 2;
    const step = 0.001;
    let sum = 0;
    for (let y = Math.log(hours) + step / 2; y < mu + 9 * sigma; y += step) {
      sum += Math.exp(-0.5 * ((y - mu) / sigma) ** 2) * step;
    }
    return sum / (sigma * Math.sqrt(2 * Math.PI));
  }

  it('is the area under the density', () => {
    for (const [hours, meanHours, sigma] of [
      [24, 4, 1],
      [72, 4, 1.5],
      [168, 7.3, 1.7],
      [1, 12, 1.3],
    ] as const) {
      const chance = chanceLonger({ hours, meanHours, sigma });
      expect(Math.abs(chance - bySum(hours, meanHours, sigma))).toBeLessThan(1e-6);
    }
  });

  it('keeps the mean: the mean length is the area under the chance', () => {
    let mean = 0;
    for (let h = 0.05; h < 4000; h += 0.1) {
      mean += chanceLonger({ hours: h, meanHours: 4, sigma: 1 }) * 0.1;
    }
    expect(mean).toBeCloseTo(4, 2);
  });

  it('is certain at no length and nothing for no outage', () => {
    expect(chanceLonger({ hours: 0, meanHours: 4, sigma: 1 })).toBe(1);
    expect(chanceLonger({ hours: 5, meanHours: 0, sigma: 1 })).toBe(0);
  });
});
