import { expect, test } from 'vitest';
import { foodSafety } from '../../src/tables/food-safety';
import { namedValue } from '../../src/tables/named-values';

// USDA Food Safety and Inspection Service guidance for power outages (2007-10-24) and the FDA text of the same rules.
test.each([
  ['closed-fridge', 4, 'h'],
  ['full-freezer', 48, 'h'],
  ['half-full-freezer', 24, 'h'],
  ['keep-at-or-below', 40, 'F'],
  ['freezer-at-or-below', 0, 'F'],
  ['discard-after-warm', 2, 'h'],
  ['refreeze-at-or-below', 40, 'F'],
  ['dry-ice-pounds', 50, 'lb'],
  ['dry-ice-hours', 48, 'h'],
])('%s is %i %s (USDA, FDA)', (id, value, unit) => {
  expect(namedValue(foodSafety, id)).toMatchObject({ value, unit, standing: 'published' });
});

test('a figure that is not in the table is our own bug', () => {
  expect(() => namedValue(foodSafety, 'smell-test')).toThrow(RangeError);
});
