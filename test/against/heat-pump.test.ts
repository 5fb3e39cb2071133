import { expect, test } from 'vitest';
import { capacityShare, inputShare } from '../../src/home/heat/heat-pump';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

test('the curves are 1 at the 47 F rating (AHRI 210/240)', () => {
  expect(capacityShare(celsius(47))).toBeCloseTo(1, 12);
  expect(inputShare(celsius(47))).toBeCloseTo(1, 12);
});

// RESNET HERS Addendum 82, single-stage heat pumps, full output at 17 F over that at 47 F: capacity 0.626, power input
// for a unit of heat 1.356. As carried in an open building model of a US national laboratory.
test('at 17 F capacity and input agree with RESNET HERS Addendum 82 within 1.5 %', () => {
  expect(Math.abs(capacityShare(celsius(17)) / 0.626 - 1)).toBeLessThan(0.015);
  expect(Math.abs(inputShare(celsius(17)) / 1.356 - 1)).toBeLessThan(0.015);
});

// Cutler et al. 2013, NREL/TP-5500-56354: coefficients worked by hand at 5 F outdoors, 70 F indoors.
//   capacity 0.4637716 + 0.0089421 x 5 + 0.0000506 x 25 = 0.509747, at 47 F 0.995829
//   input    1.6600598 - 0.0207968 x 5 + 0.00014085 x 25 = 1.559597, at 47 F 0.993747
test('at 5 F a hand calculation from the published coefficients holds', () => {
  expect(capacityShare(celsius(5))).toBeCloseTo(0.509747 / 0.995829, 4);
  expect(inputShare(celsius(5))).toBeCloseTo(1.559597 / 0.993747, 4);
});
