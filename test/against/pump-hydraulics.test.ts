import { expect, test } from 'vitest';
import {
  headFtFromPsi,
  pumpingEnergy,
  pumpPower,
  totalDynamicHeadFt,
} from '../../src/physics/pump-power';

const noLoss = { pumpEfficiency: 1, motorEfficiency: 1 };

test('5 ft3/s against 25 ft at 72 % takes 19.7 hp (handbook example for the engineering license)', () => {
  // The source works in ft-lb/s: 62.4 x 5 x 25 / 0.72 = 10,833 ft-lb/s = 19.7 hp. 1 ft3/s = 448.8 gpm.
  const power = pumpPower({ ...noLoss, gpm: 5 * 448.83, headFt: 25, pumpEfficiency: 0.72 });
  expect(power.brakeHp).toBeCloseTo(19.7, 1);
  expect(power.brakeHp * 550).toBeCloseTo(10_833, -2);
});

test('water horsepower is gpm x ft / 3960 (Alabama Extension ANR-0548)', () => {
  expect(pumpPower({ ...noLoss, gpm: 3960, headFt: 1 }).waterHp).toBeCloseTo(1, 12);
  expect(pumpPower({ ...noLoss, gpm: 100, headFt: 100 }).waterHp).toBeCloseTo(2.525, 3);
});

test('brake horsepower is water horsepower over efficiency (Alabama Extension ANR-0548)', () => {
  const power = pumpPower({ ...noLoss, gpm: 100, headFt: 100, pumpEfficiency: 0.6 });
  expect(power.brakeHp).toBeCloseTo(10_000 / 3960 / 0.6, 9);
});

test('1 psi is 2.31 ft of water, so 50 psi is 115.5 ft (irrigation course notes)', () => {
  expect(headFtFromPsi(1)).toBe(2.31);
  expect(headFtFromPsi(50)).toBeCloseTo(115.5, 9);
});

test('lift 60 ft and friction 27.5 ft with a 30/50 switch makes 203 ft (National Driller home-well series)', () => {
  expect(totalDynamicHeadFt({ liftFt: 60, frictionFt: 27.5, psi: 50 })).toBeCloseTo(203, 9);
});

test('10 gpm at 203 ft is 0.513 water hp, 0.93 brake hp at 55 %', () => {
  const power = pumpPower({ gpm: 10, headFt: 203, pumpEfficiency: 0.55, motorEfficiency: 1 });
  expect(power.waterHp).toBeCloseTo(0.513, 3);
  expect(power.brakeHp).toBeCloseTo(0.93, 2);
});

test('a 150 ft lift at 10 gpm and 50 psi takes 1.45 kW and 0.24 kWh for 100 gallons', () => {
  const headFt = totalDynamicHeadFt({ liftFt: 150, frictionFt: 10, psi: 50 });
  expect(headFt).toBeCloseTo(275.5, 9);
  const power = pumpPower({ gpm: 10, headFt, pumpEfficiency: 0.55, motorEfficiency: 0.65 });
  expect(power.brakeHp).toBeCloseTo(1.265, 3);
  expect(power.inputWatts / 1000).toBeCloseTo(1.45, 2);
  const energy = pumpingEnergy({ gallons: 100, gpm: 10, inputWatts: power.inputWatts });
  expect(energy.hours * 60).toBeCloseTo(10, 9);
  expect(energy.kwh).toBeCloseTo(0.24, 2);
});
