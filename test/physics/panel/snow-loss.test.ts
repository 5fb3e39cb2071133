import { expect, test } from 'vitest';
import { snowLossShare } from '../../../src/physics/panel/snow-loss';

const snow = { noneAboveC: 2, mostBelowC: -10, mostLostShare: 0.35 };

test('a warm month loses nothing, a hard winter month the most, one half way half', () => {
  const flat = (meanC: number) => snowLossShare({ meanC, tiltDeg: 0 }, snow);
  expect(flat(5)).toBe(0);
  expect(flat(-20)).toBeCloseTo(0.35, 12);
  expect(flat(-4)).toBeCloseTo(0.35 / 2, 12);
});

test('a steep face loses less, a wall nothing', () => {
  const cold = (tiltDeg: number) => snowLossShare({ meanC: -10, tiltDeg }, snow);
  expect(cold(45)).toBeCloseTo(0.35 / 2, 12);
  expect(cold(90)).toBeCloseTo(0, 12);
});
