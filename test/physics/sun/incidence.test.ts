import { expect, test } from 'vitest';
import { cosIncidence } from '../../../src/physics/sun/incidence';

const noon = { latDeg: 40, declinationDeg: 0, hourAngleDeg: 0 };

test('a plane tilted by the latitude faces the equinox sun square on', () => {
  expect(cosIncidence({ ...noon, tiltDeg: 40, facingDeg: 180 })).toBeCloseTo(1, 12);
});

test('the sun behind a north wall gives a negative cosine', () => {
  expect(cosIncidence({ ...noon, tiltDeg: 90, facingDeg: 0 })!).toBeLessThan(0);
});

test('an east wall sees the morning and a west wall the evening, alike', () => {
  const east = cosIncidence({ ...noon, hourAngleDeg: -45, tiltDeg: 90, facingDeg: 90 })!;
  const west = cosIncidence({ ...noon, hourAngleDeg: 45, tiltDeg: 90, facingDeg: 270 })!;
  expect(east).toBeGreaterThan(0.5);
  expect(east).toBeCloseTo(west, 12);
});

test('below the horizon there is no angle', () => {
  expect(cosIncidence({ ...noon, hourAngleDeg: 120, tiltDeg: 30, facingDeg: 180 })).toBeNull();
});
