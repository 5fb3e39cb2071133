import { expect, test } from 'vitest';
import { atLeastHours, atMostHours } from '../../src/words/en/device-hours';

test.each([
  [2.88, '2 h 50 min', '2 h 55 min'],
  [2.5, '2.5 h', '2.5 h'],
  [25.19, '25 h 10 min', '25 h 15 min'],
  [4, '4 h', '4 h'],
  [0.999, '55 min', '1 h'],
  [0.01, '0 h', '5 min'],
  [0, '0 h', '0 h'],
  [72, '3 days', '3 days'],
  [72.4, '3 days', '3 days 1 h'],
])('%f hours in hand are at most %s, and to be left at least %s', (hours, most, least) => {
  expect(atMostHours(hours)).toBe(most);
  expect(atLeastHours(hours)).toBe(least);
});

test('what is in hand is never rounded up, and what is needed never down', () => {
  const inHours = (text: string) => {
    const part = (unit: string) => Number(new RegExp(`([\\d.]+) ${unit}`).exec(text)?.[1] ?? 0);
    return part('days') * 24 + part('h') + part('min') / 60;
  };
  for (let i = 0; i <= 600; i += 1) {
    const hours = i * 0.137;
    expect(inHours(atMostHours(hours)), `${hours} in hand`).toBeLessThanOrEqual(hours + 1e-6);
    expect(inHours(atLeastHours(hours)), `${hours} left`).toBeGreaterThanOrEqual(hours - 1e-6);
  }
});
