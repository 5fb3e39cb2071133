import { expect, test } from 'vitest';
import { shown, shownRange } from '../../src/quantity/shown';

test.each([
  [6.11, 'h', '6 h'],
  [83.2, 'h', '3 days 11 h'],
  [47.6, 'h', '48 h'],
  [0.4, 'h', '24 min'],
  [3524.8, '$', '$3,520'],
  [64.43, '$', '$64'],
  [4325, '$', '$4,325'],
  [-1234.5, '$', '-$1,230'],
  [9.09, 'VA', '9 VA'],
  [5267.9, 'VA', '5,268 VA'],
  [29_230, 'VA', '29.2 kVA'],
  [0.27, 'kWh', '0.27 kWh'],
  [55.43, 'A', '55.4 A'],
])('%d %s is shown as %s', (value, unit, says) => {
  expect(shown(value, unit)).toBe(says);
});

test('a range is shown with the digits of its ends alone', () => {
  expect(shownRange({ low: 64.43, value: 114.5, high: 196.1 }, '$')).toBe('$115 ($64 to $196)');
});
