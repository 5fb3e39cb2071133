import { expect, test } from 'vitest';
import {
  hayDaviesTilted,
  hdkrTilted,
  isotropicTilted,
} from '../../../src/physics/sun/tilted-surface';

test('a flat plane gets what the level gets, whatever the sky', () => {
  const flat = {
    beam: 400,
    diffuse: 200,
    extraterrestrial: 900,
    beamRatio: 1,
    tiltDeg: 0,
    albedo: 0.2,
  };
  for (const sky of [isotropicTilted, hayDaviesTilted, hdkrTilted]) {
    expect(sky(flat).total).toBeCloseTo(600, 10);
  }
});

test('with the sun behind the plane only sky and ground are left', () => {
  const behind = {
    beam: 300,
    diffuse: 100,
    extraterrestrial: 700,
    beamRatio: 0,
    tiltDeg: 90,
    albedo: 0.2,
  };
  const sun = hdkrTilted(behind);
  expect(sun.beam).toBe(0);
  expect(sun.ground).toBeCloseTo(400 * 0.2 * 0.5, 10);
  expect(sun.sky).toBeGreaterThan(0);
});

test('night is zero and not NaN', () => {
  const night = {
    beam: 0,
    diffuse: 0,
    extraterrestrial: 0,
    beamRatio: 0,
    tiltDeg: 30,
    albedo: 0.2,
  };
  expect(hdkrTilted(night).total).toBe(0);
});
