import { expect, test } from 'vitest';
import { dailyExtraterrestrial } from '../../../src/physics/sun/extraterrestrial';
import { sunsetHourAngleDeg } from '../../../src/physics/sun/sunset-hour-angle';

test.each([
  [0, 23, 90],
  [45, 0, 90],
  [80, 20, 180],
  [80, -20, 0],
  [-80, -20, 180],
  [90, 10, 180],
  [-90, 10, 0],
])('at latitude %f and declination %f the sun sets at %f degrees', (lat, declination, angle) => {
  expect(sunsetHourAngleDeg(lat, declination)).toBeCloseTo(angle, 10);
});

test('polar night has no sun outside the air, polar day has it around the clock', () => {
  const at = (declinationDeg: number) =>
    dailyExtraterrestrial({ latDeg: 90, declinationDeg, distanceFactor: 1 });
  expect(at(-10)).toBe(0);
  // At the pole the sun keeps its height all day: 24 h x Gsc x sin(declination).
  expect(at(10)).toBeCloseTo(24 * 1.367 * Math.sin((10 * Math.PI) / 180), 10);
});
