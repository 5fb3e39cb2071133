import { describe, expect, test } from 'vitest';
import { roofYield } from '../../../src/physics/panel/roof-yield';
import { weatherYears } from '../../../src/physics/weather/weather-years';

const flat = (value: number) => new Array<number>(12).fill(value);
const persistence = {
  clearnessLag1: 0.29,
  temperatureLag1: 0.7,
  clearnessTemperature: flat(0),
};
const climate = {
  ghiKwhPerM2Day: [2, 2.8, 4, 5, 6, 6.5, 6.5, 5.8, 4.6, 3.2, 2.1, 1.7],
  diffuseKwhPerM2Day: [0.9, 1.26, 1.8, 2.25, 2.7, 2.93, 2.93, 2.61, 2.07, 1.44, 0.95, 0.77],
  clearnessSpread: flat(0.17),
  meanC: [-3, -1, 4, 10, 16, 21, 24, 23, 18, 11, 4, -1],
  rangeK: flat(11),
  daySpreadK: flat(5),
};
const weather = weatherYears({ climate, persistence, latDeg: 42, years: 4, seed: 3 });
const traits = { albedo: 0.2, noctC: 45, powerPerKelvin: -0.0035, lossShare: 0.14 };
const roof = {
  weather,
  plane: { tiltDeg: 30, facingDeg: 180 },
  clock: null,
  traits,
  panelKw: 5,
  inverterKw: 4,
  inverterEfficiency: 0.96,
};

describe('what a roof face gives', () => {
  test('the months add up to the year and the worst year is no better than the best', () => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const got = roofYield(roof);
    const sum = got.monthKwhPerDay.reduce((whole, kwh, m) => whole + kwh * days[m]!, 0);
    expect(sum).toBeCloseTo(got.yearKwh, 6);
    expect(got.worstYearKwh).toBeLessThanOrEqual(got.yearKwh);
    expect(got.bestYearKwh).toBeGreaterThanOrEqual(got.yearKwh);
  });

  test('longer dark runs are less dark', () => {
    const runs = roofYield(roof).darkestRunKwhPerDay.map((run) => run.kwhPerDay);
    expect(runs).toEqual([...runs].sort((a, b) => a - b));
  });

  test('snow takes its share of the month and of no other', () => {
    const snow = [0.5, ...flat(0).slice(1)];
    const bare = roofYield(roof).monthKwhPerDay;
    const white = roofYield({ ...roof, traits: { ...traits, snowLossByMonth: snow } });
    // A little under half: the inverter runs at lighter load, but also clips less.
    expect(white.monthKwhPerDay[0]! / bare[0]!).toBeGreaterThan(0.47);
    expect(white.monthKwhPerDay[0]! / bare[0]!).toBeLessThan(0.53);
    expect(white.monthKwhPerDay[6]).toBe(bare[6]);
  });

  test('a small inverter clips: more panels behind it add less than their share', () => {
    const small = { ...roof, inverterKw: 2 };
    const one = roofYield({ ...small, panelKw: 2 }).yearKwh;
    const three = roofYield({ ...small, panelKw: 6 }).yearKwh;
    expect(three).toBeGreaterThan(one);
    expect(three).toBeLessThan(2.6 * one);
  });
});

describe('bad input', () => {
  test('no panels, no inverter or no sun give zeros and not NaN', () => {
    for (const none of [{ panelKw: 0 }, { inverterKw: 0 }]) {
      const got = roofYield({ ...roof, ...none });
      expect(got.yearKwh).toBe(0);
      expect(got.monthKwhPerDay).toEqual(flat(0));
    }
    const dark = weatherYears({
      climate: { ...climate, ghiKwhPerM2Day: flat(0) },
      persistence,
      latDeg: 42,
      years: 2,
      seed: 1,
    });
    expect(roofYield({ ...roof, weather: dark }).yearKwh).toBe(0);
  });

  test('a tilt over 90 is refused by name and unit', () => {
    expect(() => roofYield({ ...roof, plane: { tiltDeg: 95, facingDeg: 180 } })).toThrow(
      /tilt must be from 0 to 90 degrees, not 95 degrees/,
    );
  });
});
