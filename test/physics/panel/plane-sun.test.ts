import { describe, expect, test } from 'vitest';
import { planeSunWh } from '../../../src/physics/panel/plane-sun';
import { planeYear } from '../../../src/physics/panel/plane-year';
import { weatherYears } from '../../../src/physics/weather/weather-years';

const flat = (value: number) => new Array<number>(12).fill(value);
const climate = {
  ghiKwhPerM2Day: flat(3),
  diffuseKwhPerM2Day: flat(1.4),
  clearnessSpread: flat(0.15),
  meanC: flat(10),
  rangeK: flat(10),
  daySpreadK: flat(4),
};
const persistence = { clearnessLag1: 0.29, temperatureLag1: 0.7, clearnessTemperature: flat(0) };
const weather = weatherYears({ climate, persistence, latDeg: 35, years: 3, seed: 9 });
const level = planeYear(weather.sky, { tiltDeg: 0, facingDeg: 180 }, null);

test('a flat plane gets the month’s mean sun, neither more nor less', () => {
  const hours = planeSunWh(weather, level, { albedo: 0.2 });
  const year = hours.reduce((sum, wh) => sum + wh, 0) / 3;
  expect(year / 1000).toBeCloseTo(365 * 3, 0);
});

test('any span of years, filled into a used array, is the same as cut from the whole', () => {
  const plane = planeYear(weather.sky, { tiltDeg: 40, facingDeg: 120 }, null);
  const whole = planeSunWh(weather, plane, { albedo: 0.2 });
  const used = new Float32Array(8760).fill(7);
  const second = planeSunWh(weather, plane, { albedo: 0.2, firstYear: 1, years: 1, into: used });
  expect(second).toBe(used);
  expect(second).toEqual(whole.slice(8760, 2 * 8760));
});

describe('the clock', () => {
  test('in solar time the level’s day is even about noon', () => {
    const day = Array.from(level.totalShare.slice(24 * 100, 24 * 101));
    for (let h = 0; h < 12; h++) expect(day[h]).toBeCloseTo(day[23 - h]!, 6);
  });

  test('west in a time zone the sun is late by four minutes a degree', () => {
    const late = planeYear(
      weather.sky,
      { tiltDeg: 0, facingDeg: 180 },
      { lonDeg: -97.5, utcOffsetH: -6 }, // 7.5 degrees west of 90 W: half an hour
    );
    const middle = (shares: Float32Array) =>
      shares.reduce((sum, share, i) => sum + share * ((i % 24) + 0.5), 0) / 365;
    // The equation of time averages to nothing over the year.
    expect(middle(late.totalShare) - middle(level.totalShare)).toBeCloseTo(0.5, 1);
  });
});

test('polar night has no hours of sun and polar day has 24', () => {
  const north = weatherYears({ climate, persistence, latDeg: 71.3, years: 1, seed: 9 });
  const plane = planeYear(north.sky, { tiltDeg: 30, facingDeg: 180 }, null);
  expect(plane.endHour[354]! - plane.firstHour[354]!).toBe(0);
  expect(plane.endHour[171]! - plane.firstHour[171]!).toBe(24);
  expect(planeSunWh(north, plane, { albedo: 0.2 }).every(Number.isFinite)).toBe(true);
});
