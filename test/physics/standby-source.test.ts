import { expect, test } from 'vitest';
import { carriesLargestLoad } from '../../src/physics/standby-capacity';
import {
  generatorStartVerdict,
  generatorVoltageDipPercent,
  inverterStartVerdict,
} from '../../src/physics/voltage-dip';

test('a 7.6 kW inverter may not feed a panel with a 9.6 kW heater on it', () => {
  expect(carriesLargestLoad({ sourceVa: 7600, loadsVa: [1500, 9600] })).toBe(false);
  expect(carriesLargestLoad({ sourceVa: 7600, loadsVa: [1500, 4500] })).toBe(true);
});

test('a start of twice the rating at a reactance of 0.25 dips a third: 0.5 / 1.5', () => {
  const start = { startingVa: 20_000, ratedVa: 10_000, reactance: 0.25 };
  expect(generatorVoltageDipPercent(start)).toBeCloseTo(100 / 3, 9);
  expect(generatorStartVerdict({ ...start, mostDipPercent: 30 })).toBe('dips-too-far');
  expect(generatorStartVerdict({ ...start, mostDipPercent: 35 })).toBe('carries');
});

test('nothing that starts dips nothing', () => {
  expect(generatorVoltageDipPercent({ startingVa: 0, ratedVa: 5000, reactance: 0.2 })).toBe(0);
});

test('an inverter carries a start up to its surge and trips above', () => {
  expect(inverterStartVerdict({ peakVa: 12_000, surgeVa: 12_000 })).toBe('carries');
  expect(inverterStartVerdict({ peakVa: 12_001, surgeVa: 12_000 })).toBe('trips');
});
