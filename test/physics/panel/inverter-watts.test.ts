import { expect, test } from 'vitest';
import { inverterWatts } from '../../../src/physics/panel/panel-hours';

const home = { ratedWatts: 4000, ratedEfficiency: 0.96 };

test('too little to run on gives nothing, never less than nothing', () => {
  expect(inverterWatts({ dcWatts: 10, ...home })).toBe(0);
  expect(inverterWatts({ dcWatts: 0, ...home })).toBe(0);
  expect(inverterWatts({ dcWatts: -5, ...home })).toBe(0);
});

test('more than the rating is clipped to the rating', () => {
  expect(inverterWatts({ dcWatts: 4500, ...home })).toBe(4000);
});

test('an inverter of no rating gives nothing', () => {
  expect(inverterWatts({ dcWatts: 1000, ratedWatts: 0, ratedEfficiency: 0.96 })).toBe(0);
});
