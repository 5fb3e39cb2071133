import { expect, test } from 'vitest';
import { priceByState, priceGrowth, statePrice } from '../../src/tables/electricity-price';

test('there is a price for fifty states, the District of Columbia and the country', () => {
  expect(new Set(priceByState.rows.map((r) => r.state)).size).toBe(52);
});

test('an unknown state falls back on the country', () => {
  expect(statePrice(null).state).toBe('US');
  expect(statePrice('ZZ').state).toBe('US');
  expect(statePrice('ca').centsPerKwh).toBe(29.51);
});

test('the country lies between its cheapest and dearest state', () => {
  const cents = priceByState.rows.map((r) => r.centsPerKwh);
  expect(statePrice('US').centsPerKwh).toBeGreaterThan(Math.min(...cents));
  expect(statePrice('US').centsPerKwh).toBeLessThan(Math.max(...cents));
});

test('prices rose 2.58 % a year from 2010 to 2024 and 5.81 % from 2020', () => {
  expect(priceGrowth({ fromYear: 2010, toYear: 2024 })).toBeCloseTo(0.0258, 4);
  expect(priceGrowth({ fromYear: 2020, toYear: 2024 })).toBeCloseTo(0.0581, 4);
  expect(() => priceGrowth({ fromYear: 1900, toYear: 2024 })).toThrow(RangeError);
});
