import { expect, test } from 'vitest';
import { clockHour, clockStretch } from '../../../src/words/en/clock-hour';
import { sayHours } from '../../../src/words/en/say-measures';

test('each hour of the day is said once, and no hour above 12', () => {
  const said = Array.from({ length: 24 }, (_, hour) => clockHour(hour));
  expect(new Set(said).size).toBe(24);
  for (const one of said) expect(Number.parseInt(one, 10) || 0).toBeLessThan(12);
  expect(clockHour(24)).toBe(clockHour(0));
});

test('a stretch names the half of the day once where both ends lie in it', () => {
  expect(clockStretch([7, 8])).toBe('7 to 8 am');
  expect(clockStretch([10, 14])).toBe('10 am to 2 pm');
  expect(clockStretch([9, 12])).toBe('9 am to noon');
  expect(clockStretch([0, 2])).toBe('midnight to 2 am');
  expect(clockStretch([22, 24], 'until')).toBe('10 pm until midnight');
  expect(
    sayHours(
      [
        [7, 8],
        [19, 21],
      ],
      'until',
    ),
  ).toBe('7 until 8 am and 7 until 9 pm');
});
