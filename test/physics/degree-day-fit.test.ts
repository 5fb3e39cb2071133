import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degreeDayFit, type MeteredMonth } from '../../src/physics/degree-day-fit';
import { MONTH_DAYS } from '../../src/physics/weather/calendar';
import { coolingDegrees, heatingDegrees } from '../../src/physics/weather/degree-days';

/** Invented degrees of a year with winter and summer. */
const HEATING = [19, 17, 12, 7, 3, 0.5, 0, 0, 1.5, 6, 12, 17];
const COOLING = [0, 0, 0, 0.3, 1.5, 4.5, 6.5, 6, 3, 0.4, 0, 0];
const months = (kwhPerDay: (m: number) => number): MeteredMonth[] =>
  MONTH_DAYS.map((days, m) => ({
    days,
    heatingK: HEATING[m]!,
    coolingK: COOLING[m]!,
    kwhPerDay: kwhPerDay(m),
  }));

describe('least squares on degree days', () => {
  test('invented, arithmetic: bills built from known slopes give the slopes back', () => {
    const part = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(part(60), part(4), part(6), (base, h, c) => {
        fc.pre(base + h + c > 0.1);
        const fit = degreeDayFit(months((m) => base + h * HEATING[m]! + c * COOLING[m]!))!;
        expect(fit.baseKwhPerDay).toBeCloseTo(base, 6);
        expect(fit.kwhPerHeatingK).toBeCloseTo(h, 6);
        expect(fit.kwhPerCoolingK).toBeCloseTo(c, 6);
        expect(fit.cvRmse).toBeLessThan(1e-6);
      }),
    );
  });

  test('no part is ever below zero, and no other choice of parts above zero fits better', () => {
    const use = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 12, maxLength: 12 });
    const nearby = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 3, noNaN: true })));
    fc.assert(
      fc.property(use, nearby, (kwh, [b, h, c]) => {
        fc.pre(kwh.some((one) => one > 0));
        const told = months((m) => kwh[m]!);
        const fit = degreeDayFit(told)!;
        const misfit = (base: number, heat: number, cool: number) =>
          told.reduce(
            (sum, m) =>
              sum + m.days * (m.kwhPerDay - base - heat * m.heatingK - cool * m.coolingK) ** 2,
            0,
          );
        const { baseKwhPerDay, kwhPerHeatingK, kwhPerCoolingK } = fit;
        expect(Math.min(baseKwhPerDay, kwhPerHeatingK, kwhPerCoolingK)).toBeGreaterThanOrEqual(0);
        const best = misfit(baseKwhPerDay, kwhPerHeatingK, kwhPerCoolingK);
        const other = misfit(baseKwhPerDay * b!, kwhPerHeatingK * h!, kwhPerCoolingK * c!);
        const free = misfit(20 * b!, h!, c!);
        expect(best).toBeLessThanOrEqual(Math.min(other, free) * (1 + 1e-9) + 1e-6);
      }),
    );
  });

  test('use that falls with cold is no heating', () => {
    expect(degreeDayFit(months((m) => 40 - HEATING[m]!))!.kwhPerHeatingK).toBe(0);
  });

  // By hand: 20 kWh in six months of 30 days and 30 in six others, degrees 0: base 25, every month misses by 5,
  // CV(RMSE) = sqrt(12 x 25 / (12 - 1)) / 25 = 0.2089.
  test('by hand: CV(RMSE) of months that no weather explains', () => {
    const even = Array.from({ length: 12 }, (_, m) => ({
      days: 30,
      kwhPerDay: m % 2 === 0 ? 20 : 30,
      heatingK: 0,
      coolingK: 0,
    }));
    const fit = degreeDayFit(even)!;
    expect(fit.baseKwhPerDay).toBeCloseTo(25, 9);
    expect(fit.cvRmse).toBeCloseTo(0.2089, 4);
    expect(fit.r2).toBeCloseTo(0, 9);
  });

  test('too few months, or no use at all, give no fit', () => {
    expect(degreeDayFit(months(() => 10).slice(0, 5))).toBeNull();
    expect(degreeDayFit(months(() => 0))).toBeNull();
    expect(degreeDayFit([])).toBeNull();
  });
});

describe('degrees of a usual day', () => {
  test('without spread are the plain difference', () => {
    expect(heatingDegrees({ meanC: 8, strayK: 0 }, 18)).toBe(10);
    expect(coolingDegrees({ meanC: 8, strayK: 0 }, 18)).toBe(0);
    expect(coolingDegrees({ meanC: 20, strayK: 0 }, 18)).toBe(2);
  });

  // The mean of the upper half of a normal law of spread s is s / sqrt(2 pi): 4 K gives 1.5958 K.
  test('at the base are half heating, half cooling', () => {
    const day = { meanC: 18, strayK: 4 };
    expect(heatingDegrees(day, 18)).toBeCloseTo(1.5958, 4);
    expect(coolingDegrees(day, 18)).toBeCloseTo(1.5958, 4);
  });
});
