import { expect, test } from 'vitest';
import {
  acceptsGeneratorFrequency,
  generatorFrequencyHz,
  largestChargerWatts,
} from '../../src/physics/generator-charging';

const generator = { ratedWatts: 5000, ratedVa: 5000, share: 0.8, otherWatts: 1000, otherVa: 1250 };

test('a charger with a poor power factor is held back by VA, one with a good one by W', () => {
  expect(largestChargerWatts({ ...generator, chargerPowerFactor: 0.6 })).toBeCloseTo(2750 * 0.6, 9);
  expect(largestChargerWatts({ ...generator, otherVa: 1000, chargerPowerFactor: 1 })).toBe(3000);
});

test('an engine that is full already has nothing left for a charger', () => {
  expect(largestChargerWatts({ ...generator, otherWatts: 4200, chargerPowerFactor: 1 })).toBe(0);
});

test('a set that idles at 62.5 Hz and carries full load at 60 shows 61.25 Hz half way', () => {
  expect(generatorFrequencyHz({ noLoadHz: 62.5, fullLoadHz: 60, loadShare: 0.5 })).toBe(61.25);
});

test('an inverter that wants 59.3 to 60.5 Hz refuses it, one that takes 55 to 65 Hz does not', () => {
  const set = { noLoadHz: 62.5, fullLoadHz: 60 };
  expect(acceptsGeneratorFrequency({ ...set, lowHz: 59.3, highHz: 60.5 })).toBe(false);
  expect(acceptsGeneratorFrequency({ ...set, lowHz: 55, highHz: 65 })).toBe(true);
});
