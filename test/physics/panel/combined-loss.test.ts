import { expect, test } from 'vitest';
import { combinedLoss } from '../../../src/physics/panel/combined-loss';

test('two halves leave a quarter', () => {
  expect(combinedLoss([0.5, 0.5])).toBe(0.75);
  expect(combinedLoss([])).toBe(0);
});

test('a share above one is refused', () => {
  expect(() => combinedLoss([1.2])).toThrow(RangeError);
});
