import { expect, test } from 'vitest';
import {
  newestPrice,
  priceByState,
  priceGrowth,
  statePrice,
} from '../../../src/tables/prices/electricity-price';

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

test('the newest whole year goes first, and the year is told', () => {
  expect(newestPrice(statePrice('GA'))).toEqual({ cents: 14.14, year: 2024 });
  expect(newestPrice(statePrice('WA'))).toEqual({ cents: 10.98, year: 2023 });
});

// Outside check: EIA average monthly bill, residential, 2024: dollars a month at that year's use. Both are printed rounded.
test.each([
  ['CA', 503, 160.86],
  ['CT', 695, 199.66],
  ['MA', 570, 167.2],
  ['NH', 619, 144.87],
  ['US', 863, 142.26],
])('%s: price times %s kWh is the bill of 2024, $%s', (state, kwh, dollars) => {
  const bill = (statePrice(state).centsPerKwh2024! / 100) * kwh;
  expect(Math.abs(bill - dollars)).toBeLessThan(0.2);
});

test('no price moved by more than a fifth in a year', () => {
  for (const { state, centsPerKwh, centsPerKwh2024 } of priceByState.rows) {
    if (centsPerKwh2024 === null) continue;
    expect(Math.abs(centsPerKwh2024 / centsPerKwh - 1), state).toBeLessThan(0.2);
  }
});
