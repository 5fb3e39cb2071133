import { describe, expect, it } from 'vitest';
import { formatQuantity, formatRange } from '../../src/quantity/format-quantity';

describe('a quantity for people', () => {
  it.each([
    [1500, 'W', '1,500 W'],
    [9999, 'W', '9,999 W'],
    [10_000, 'W', '10 kW'],
    [12_480, 'W', '12.5 kW'],
    [3.5, 'W', '3.5 W'],
    [0, 'W', '0 W'],
    [34_790, 'VA', '34.8 kVA'],
    [0.8, 'kW', '0.8 kW'],
    [24, 'h', '24 h'],
    [48, 'h', '48 h'],
    [49, 'h', '2 days 1 h'],
    [72, 'h', '3 days'],
    [0.5, 'h', '30 min'],
    [1.5, 'h', '1.5 h'],
    [90, 'min', '90 min'],
    [0.75, 'hp', '3/4 hp'],
    [0.33, 'hp', '1/3 hp'],
    [1.5, 'hp', '1 1/2 hp'],
    [1, 'hp', '1 hp'],
    [3, 'tons', '3 tons'],
    [1, 'tons', '1 ton'],
    [1800, '$', '$1,800'],
    [7.5, '$', '$7.50'],
    [-20, '$', '-$20'],
    [19, 'c/kWh', '19 cents/kWh'],
    [300, 'ft2', '300 sq ft'],
    [1, 'people', '1 person'],
    [3, 'people', '3 people'],
    [1965, 'year', '1965'],
    [1.3, 'per year', '1.3 per year'],
    [40, '%', '40%'],
    [65, 'F', '65 °F'],
    [2, 'count', '2'],
    [13.04, 'kWh/day', '13 kWh/day'],
  ])('prints %d %s', (value, unit, text) => {
    expect(formatQuantity(value, unit)).toBe(text);
  });

  it('prints no NaN', () => {
    expect(() => formatQuantity(Number.NaN, 'W')).toThrow(RangeError);
  });
});

describe('a range', () => {
  it.each([
    [300, 600, 900, 'W', '600 W (300 to 900 W)'],
    [5000, 9000, 20_000, 'W', '9,000 W (5,000 W to 20 kW)'],
    [24, 24, 96, 'h', '24 h (24 h to 4 days)'],
    [0, 150, 500, '$', '$150 ($0 to $500)'],
    [0.5, 0.75, 1.5, 'hp', '3/4 hp (1/2 to 1 1/2 hp)'],
    [20, 40, 60, '%', '40% (20 to 60%)'],
    [3, 3, 3, 'tons', '3 tons'],
    [599.9, 600, 600.1, 'W', '600 W'],
  ])('of %d, %d, %d %s reads well', (low, value, high, unit, text) => {
    expect(formatRange(low, value, high, unit)).toBe(text);
  });

  it('refuses bounds out of order', () => {
    expect(() => formatRange(2, 1, 3, 'W')).toThrow(RangeError);
  });
});
