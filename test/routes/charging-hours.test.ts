import { expect, test } from 'vitest';
import {
  chargingHours,
  longestRest,
  MOST_CHARGING_HOURS,
} from '../../src/routes/kinds/charging-hours';

const starts = (hours: readonly number[]) =>
  hours.filter((on, h) => on === 1 && hours[(h + 23) % 24] === 0).length;

test.each(Array.from({ length: 24 }, (_, h) => h + 1))(
  'a generator that refills a battery for %d h a day is started at most twice, by people who are awake',
  (hoursPerDay) => {
    const hours = chargingHours(hoursPerDay);
    expect(hours.reduce((sum, on) => sum + on, 0)).toBe(Math.min(hoursPerDay, MOST_CHARGING_HOURS));
    expect(starts(hours)).toBeLessThanOrEqual(2);
    for (const h of [22, 23, 0, 1, 2, 3, 4, 5]) expect(hours[h]).toBe(0);
  },
);

test('the longest rest is the night between the evening and the morning', () => {
  expect(longestRest(chargingHours(4))).toBe(13);
  expect(longestRest(chargingHours(16))).toBe(8);
});
