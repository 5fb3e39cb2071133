import { describe, expect, test } from 'vitest';
import { monthDegrees } from '../../src/home/weather/usual-hours';
import { degreeDayFit, type MeteredMonth } from '../../src/physics/degree-day-fit';
import { MONTH_DAYS } from '../../src/physics/weather/calendar';
import { allStations } from '../../src/tables/place/climate';

// Degree days to base 65 F of 1,020 stations (TMY3, NREL/TP-581-43156): ours come from monthly means and spreads alone.
describe('degree days of a usual year', () => {
  const misses = (of: 'heating' | 'cooling', atLeast: number) => {
    const found = allStations().flatMap(({ climate }) => {
      const published =
        of === 'heating' ? climate.heatingDegreeDays65F : climate.coolingDegreeDays65F;
      if (published < atLeast) return [];
      const { heatingK, coolingK } = monthDegrees(climate);
      const months = of === 'heating' ? heatingK : coolingK;
      const ours = 1.8 * months.reduce((sum, degrees, m) => sum + degrees * MONTH_DAYS[m]!, 0);
      return [Math.abs(ours / published - 1)];
    });
    return found.sort((a, b) => a - b);
  };
  const at = (sorted: number[], share: number) => sorted[Math.floor(share * sorted.length)]!;

  test('heating: half of the stations within 1 %, nineteen in twenty within 5 %', () => {
    const found = misses('heating', 1000);
    expect(found.length).toBeGreaterThan(900);
    expect(at(found, 0.5)).toBeLessThan(0.01);
    expect(at(found, 0.95)).toBeLessThan(0.05);
  });

  test('cooling: half of the stations within 4 %, nineteen in twenty within 12 %', () => {
    const found = misses('cooling', 500);
    expect(found.length).toBeGreaterThan(600);
    expect(at(found, 0.5)).toBeLessThan(0.04);
    expect(at(found, 0.95)).toBeLessThan(0.12);
  });
});

// Anscombe 1973, Graphs in statistical analysis, The American Statistician 27, 17-21: all four sets have the regression
// y = 3.00 + 0.500 x and r2 0.667 (0.666 for the second); the published worked example of least squares with one slope.
const ANSCOMBE = {
  x: [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5],
  first: [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68],
  second: [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74],
  third: [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73],
};

test.each([
  ['heating', 'first'],
  ['heating', 'second'],
  ['cooling', 'third'],
] as const)('one slope (%s) comes out as published for the %s set of Anscombe', (of, set) => {
  const months = ANSCOMBE.x.map(
    (x, i): MeteredMonth => ({
      days: 30,
      kwhPerDay: ANSCOMBE[set][i]!,
      heatingK: of === 'heating' ? x : 0,
      coolingK: of === 'cooling' ? x : 0,
    }),
  );
  const fit = degreeDayFit(months)!;
  const [slope, other] =
    of === 'heating'
      ? [fit.kwhPerHeatingK, fit.kwhPerCoolingK]
      : [fit.kwhPerCoolingK, fit.kwhPerHeatingK];
  expect(fit.baseKwhPerDay).toBeCloseTo(3, 2);
  expect(slope).toBeCloseTo(0.5, 3);
  expect(other).toBe(0);
  expect(fit.r2).toBeCloseTo(0.667, 2);
});
