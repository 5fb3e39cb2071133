import { describe, expect, test } from 'vitest';
import { hourlyTemperatureC } from '../../../src/physics/weather/hourly-temperature';
import { monthStatistics } from '../../../src/physics/weather/month-statistics';
import { weatherYears } from '../../../src/physics/weather/weather-years';

const flat = (value: number) => new Array<number>(12).fill(value);
const climate = {
  ghiKwhPerM2Day: [1.9, 2.8, 4, 5, 6, 6.5, 6.4, 5.6, 4.4, 3.1, 2, 1.6],
  diffuseKwhPerM2Day: [0.85, 1.26, 1.8, 2.25, 2.7, 2.93, 2.88, 2.52, 1.98, 1.4, 0.9, 0.72],
  clearnessSpread: flat(0.16) as (number | null)[],
  meanC: [-4, -2, 3, 10, 16, 21, 24, 23, 18, 11, 4, -2],
  rangeK: flat(10),
  daySpreadK: flat(5),
};
const persistence = {
  clearnessLag1: 0.29,
  temperatureLag1: 0.7,
  clearnessTemperature: [
    -0.17, -0.09, -0.01, 0.11, 0.22, 0.34, 0.28, 0.21, 0.15, 0.05, -0.06, -0.16,
  ],
};
const wish = { climate, persistence, latDeg: 42, years: 100, seed: 20261125 };
const weather = weatherYears(wish);

test('the same seed gives the same years, another seed others with the same means', () => {
  expect(weatherYears(wish).clearness).toEqual(weather.clearness);
  const other = weatherYears({ ...wish, seed: 7 });
  expect(other.clearness).not.toEqual(weather.clearness);
  expect(monthStatistics(other)[0]!.ghiKwhPerM2Day).toBeCloseTo(1.9, 3);
});

test('clear January days are cold and clear June days warm, as told', () => {
  const correlation = (month: number, from: number, days: number) => {
    const k: number[] = [];
    const c: number[] = [];
    for (let year = 0; year < 100; year++) {
      for (let d = 0; d < days; d++) {
        k.push(weather.clearness[year * 365 + from + d]!);
        c.push(weather.meanC[year * 365 + from + d]!);
      }
    }
    const mean = (v: number[]) => v.reduce((sum, x) => sum + x, 0) / v.length;
    const [mk, mc] = [mean(k), mean(c)];
    const product = mean(k.map((x, i) => (x - mk) * (c[i]! - mc)));
    const spread = (v: number[], m: number) => Math.sqrt(mean(v.map((x) => (x - m) ** 2)));
    const got = product / (spread(k, mk) * spread(c, mc));
    // 3,000 days with lag leave a standard error of about 0.03; the bent law and the season take a little.
    expect(Math.abs(got - persistence.clearnessTemperature[month]!)).toBeLessThan(0.08);
  };
  correlation(0, 0, 31);
  correlation(5, 151, 30);
});

test('a clear day has a wide range of temperature', () => {
  let [clear, dull, clearDays, dullDays] = [0, 0, 0, 0];
  for (let i = 0; i < weather.clearness.length; i++) {
    if (weather.clearness[i]! > 0.6) {
      clear += weather.rangeK[i]!;
      clearDays++;
    } else if (weather.clearness[i]! < 0.25) {
      dull += weather.rangeK[i]!;
      dullDays++;
    }
  }
  expect(clear / clearDays).toBeGreaterThan(1.3 * (dull / dullDays));
});

describe('edges', () => {
  test('polar night is dark and finite, and its ratios are null', () => {
    const north = weatherYears({
      ...wish,
      latDeg: 71.3,
      years: 3,
      climate: {
        ...climate,
        ghiKwhPerM2Day: [0, 0.6, 2, 4, 5, 5, 4.5, 2.8, 1.5, 0.6, 0.05, 0],
        clearnessSpread: [null, ...flat(0.12).slice(2), null],
      },
    });
    expect(north.clearness.every(Number.isFinite)).toBe(true);
    const december = monthStatistics(north)[11]!;
    expect(december.ghiKwhPerM2Day).toBe(0);
    expect(december.betweenYears).toBeNull();
    expect(december.darkest3Days).toBeNull();
  });

  test('no sun at all is dark years, not NaN', () => {
    const dark = weatherYears({
      ...wish,
      years: 2,
      climate: { ...climate, ghiKwhPerM2Day: flat(0) },
    });
    expect(dark.clearness.every((k) => k === 0)).toBe(true);
    expect(dark.rangeK.every(Number.isFinite)).toBe(true);
  });

  test('years out of range or a broken seed are refused', () => {
    expect(() => weatherYears({ ...wish, years: 0 })).toThrow(/years/);
    expect(() => weatherYears({ ...wish, seed: 1.5 })).toThrow(/seed/);
  });

  test('a place wider than the law is stretched and listed with its ratio', () => {
    const wide = weatherYears({
      ...wish,
      climate: { ...climate, clearnessSpread: [0.24, ...flat(0.16).slice(1)] },
    });
    expect(wide.widerThanLaw.map((one) => one.month)).toContain(0);
    expect(monthStatistics(wide)[0]!.clearnessSpread).toBeCloseTo(0.24, 1);
  });
});

test('a year cut from the hourly temperatures is the same as that year alone', () => {
  const whole = hourlyTemperatureC(weather);
  const used = new Float32Array(8760);
  hourlyTemperatureC(weather, { firstYear: 4, years: 1, into: used });
  expect(used).toEqual(whole.slice(4 * 8760, 5 * 8760));
});
