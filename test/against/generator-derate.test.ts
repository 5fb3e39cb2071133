import { describe, expect, it } from 'vitest';
import { generatorOutputKw, SMALL_GENERATOR_DERATE } from '../../src/physics/generator-derate';

const small = { ratedKw: 1, airC: 20, ...SMALL_GENERATOR_DERATE };

describe('an engine in thin or hot air', () => {
  it("keeps the tables of a small generator's manual: 3 % for 500 m above 1000 m, 3 % for 5 C above 40 C", () => {
    const manual = {
      ratedKw: 1,
      lossPerThousandFt: 0.03 / (500 / 304.8),
      freeFt: 1000 / 0.3048,
      lossPerFiveKelvin: 0.03,
      freeC: 40,
    };
    const altitude: [number, number][] = [
      [1500, 0.97],
      [2000, 0.94],
      [2500, 0.91],
      [3000, 0.88],
      [3500, 0.85],
      [4000, 0.82],
    ];
    for (const [meters, share] of altitude) {
      const got = generatorOutputKw({ ...manual, altitudeFt: meters / 0.3048, airC: 20 });
      expect(got).toBeCloseTo(share, 9);
    }
    const heat: [number, number][] = [
      [45, 0.97],
      [50, 0.94],
      [55, 0.91],
      [60, 0.88],
    ];
    for (const [airC, share] of heat) {
      expect(generatorOutputKw({ ...manual, altitudeFt: 0, airC })).toBeCloseTo(share, 9);
    }
  });

  it('falls about with the pressure of the standard atmosphere (US Standard Atmosphere 1976)', () => {
    for (const altitudeFt of [2000, 5280, 8000]) {
      const pressure = (1 - 6.8756e-6 * altitudeFt) ** 5.2559;
      const share = generatorOutputKw({ ...small, altitudeFt });
      // 3.5 % a thousand feet is a straight line through a curve
      expect(Math.abs(pressure - share)).toBeLessThan(0.03);
    }
    expect(generatorOutputKw({ ...small, altitudeFt: 5280 })).toBeCloseTo(1 - 0.035 * 5.28, 12);
  });

  it('gives its rating at sea level in mild air, and never less than nothing', () => {
    expect(generatorOutputKw({ ...small, ratedKw: 5, altitudeFt: -200 })).toBe(5);
    expect(generatorOutputKw({ ...small, altitudeFt: 20_000, lossPerThousandFt: 0.06 })).toBe(0);
    expect(() => generatorOutputKw({ ...small, altitudeFt: 40_000 })).toThrow(/40000 ft/);
  });
});
