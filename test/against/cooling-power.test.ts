import { describe, expect, test } from 'vitest';
import {
  coolingWatts,
  coolingWattsFromTons,
  copFromEer,
  seasonalCoolingKwh,
  wattsFromCop,
} from '../../src/physics/cooling-power';

// Published identity: kW a ton = 12 / EER, printed to two places.
describe('power of a ton of cooling by EER', () => {
  test.each([
    [8, 1.5],
    [9, 1.33],
    [10, 1.2],
    [11, 1.09],
    [12, 1.0],
    [13, 0.92],
    [14, 0.86],
    [16, 0.75],
  ])('EER %i takes %f kW a ton', (eer, kw) => {
    expect(coolingWattsFromTons({ tons: 1, eer }) / 1000).toBeCloseTo(kw, 2);
  });

  test.each([
    [8, 4.5],
    [10, 3.6],
    [12, 3.0],
    [14, 2.57],
  ])('three tons at EER %i take %f kW', (eer, kw) => {
    expect(coolingWattsFromTons({ tons: 3, eer }) / 1000).toBeCloseTo(kw, 2);
  });
});

test('5000 Btu/h at SEER 10 for 1000 h uses 500 kWh, 500 W on average (worked figure of the SEER definition)', () => {
  expect(seasonalCoolingKwh({ btuPerHour: 5000, fullLoadHours: 1000, seer: 10 })).toBe(500);
  expect(coolingWatts({ btuPerHour: 5000, eer: 10 })).toBe(500);
});

test('COP is EER / 3.412 and kW a ton 3.517 / COP (definition of the units)', () => {
  expect(copFromEer(3.412)).toBe(1);
  expect(wattsFromCop({ btuPerHour: 12_000, cop: 1 }) / 1000).toBeCloseTo(3.517, 3);
});
