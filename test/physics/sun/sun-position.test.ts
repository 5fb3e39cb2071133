import { expect, test } from 'vitest';
import { sunPosition } from '../../../src/physics/sun/sun-position';

const noon = Date.UTC(2026, 5, 21, 12) / 1000;

test('latitude and longitude outside the globe are refused with value and unit', () => {
  expect(() => sunPosition({ unixSeconds: noon, latDeg: 91, lonDeg: 0 })).toThrow(/91 degrees/);
  expect(() => sunPosition({ unixSeconds: noon, latDeg: 0, lonDeg: Number.NaN })).toThrow(
    /longitude/,
  );
});

test('midsummer noon stands north of a place at 10 north and south of one at 40 north', () => {
  const at = (latDeg: number) => sunPosition({ unixSeconds: noon, latDeg, lonDeg: 0 }).azimuthDeg;
  expect(Math.cos((at(10) * Math.PI) / 180)).toBeGreaterThan(0.9);
  expect(Math.cos((at(40) * Math.PI) / 180)).toBeLessThan(-0.9);
});

test('years before 1970 work as well', () => {
  const sun = sunPosition({ unixSeconds: Date.UTC(1955, 5, 21, 12) / 1000, latDeg: 0, lonDeg: 0 });
  expect(sun.declinationDeg).toBeCloseTo(23.44, 1);
  expect(Math.abs(sun.hourAngleDeg)).toBeLessThan(1);
});
