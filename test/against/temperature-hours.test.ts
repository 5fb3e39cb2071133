import { describe, expect, test } from 'vitest';
import { quantileInPlace } from '../../src/outage/quantile';
import {
  DAILY_RANGE_FRACTION,
  hourlyTemperatureC,
  hourTemperatureC,
} from '../../src/physics/weather/hourly-temperature';
import { weatherYears } from '../../src/physics/weather/weather-years';
import { allStations } from '../../src/tables/place/climate';
import { persistenceFigures } from '../../src/tables/place/weather-persistence';

describe('ASHRAE Handbook of Fundamentals 2021, chapter 14, Table 6', () => {
  test('the maximum stands at 14 and 15 o’clock, the minimum at 5, a whole range apart', () => {
    expect(DAILY_RANGE_FRACTION.indexOf(0)).toBe(14 - 1);
    expect(DAILY_RANGE_FRACTION.indexOf(1)).toBe(5 - 1);
  });

  test('a day of 91 F maximum and 20 F range has 91 - 0.24 x 20 F at 18 o’clock', () => {
    const rangeK = 20 / 1.8;
    const meanF = 91 - (12.87 / 24) * 20; // the 24 fractions sum to 12.87
    const at18 = hourTemperatureC({ meanC: (meanF - 32) / 1.8, rangeK, hour: 17 });
    expect(at18 * 1.8 + 32).toBeCloseTo(91 - 0.24 * 20, 6);
  });

  test('the mean of the 24 hours is the day’s mean', () => {
    let sum = 0;
    for (let hour = 0; hour < 24; hour++) {
      sum += hourTemperatureC({ meanC: 7, rangeK: 11, hour });
    }
    expect(sum / 24).toBeCloseTo(7, 10);
  });
});

// Temperatures that 99 and 1 in 100 hours exceed, and degree days, counted from the TMY3 hours of the
// stations (Wilcox & Marion 2008, NREL/TP-581-43156). The generator is told none of them. Each drawn year's mark is
// held against the typical year's, in the mean of the years. A typical year is put together from typical months, so the
// drawn years, some of whose months are cold or mild throughout, go a little further out.
const YEARS = 20;

describe('cold, heat and degree days that the generator is not told, at every sixteenth station', () => {
  const made = allStations()
    .filter((_, i) => i % 16 === 0)
    .map(({ climate, latDeg }, i) => {
      const persistence = persistenceFigures(climate);
      const wish = { climate, persistence, latDeg, years: YEARS, seed: 20261125 + i };
      const weather = weatherYears(wish);
      let [cold, hot] = [0, 0];
      for (let firstYear = 0; firstYear < YEARS; firstYear++) {
        const hours = new Float64Array(hourlyTemperatureC(weather, { firstYear, years: 1 }));
        // The 88th and the 8,673rd of the 8,760 hours from the coldest.
        cold += quantileInPlace(hours, 88 / 8760)! / YEARS;
        hot += quantileInPlace(hours, 8673 / 8760)! / YEARS;
      }
      const degreeDays = weather.meanC.reduce(
        (sum, c) => sum + Math.max(0, 65 - (c * 1.8 + 32)),
        0,
      );
      return {
        cold: cold - climate.heat99C,
        hot: hot - climate.cool1C,
        heating: degreeDays / YEARS - climate.heatingDegreeDays65F,
      };
    });
  const at = (values: number[], share: number) =>
    values.sort((a, b) => a - b)[Math.floor(share * values.length)]!;

  test.each([
    ['cold', -1, 0, -2.7, 1.2],
    ['hot', 0, 1, -1, 2.4],
  ] as const)(
    'the %s hour in a hundred: half of the stations and nine in ten',
    (side, coldest, warmest, least, most) => {
      const off = made.map((one) => one[side]);
      const [median, low, high] = [at(off, 0.5), at(off, 0.05), at(off, 0.95)];
      console.log(`${side}: median ${median}, nine in ten from ${low} to ${high} K`);
      expect(median).toBeGreaterThan(coldest);
      expect(median).toBeLessThan(warmest);
      expect(low).toBeGreaterThan(least);
      expect(high).toBeLessThan(most);
    },
  );

  test('heating degree days are within 50 F days at the median, 200 at nine in ten', () => {
    const off = made.map((one) => one.heating);
    expect(Math.abs(at(off, 0.5))).toBeLessThan(50);
    expect(at(off, 0.05)).toBeGreaterThan(-200);
    expect(at(off, 0.95)).toBeLessThan(200);
  });
});
