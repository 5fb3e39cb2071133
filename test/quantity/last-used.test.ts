import { expect, test } from 'vitest';
import { LastUsed } from '../../src/quantity/last-used';

test('of what was made by name the one not asked for the longest goes first', () => {
  const kept = new LastUsed<number>(2);
  kept.set('a', 1);
  kept.set('b', 2);
  expect(kept.get('a')).toBe(1);
  kept.set('c', 3);
  expect([kept.get('a'), kept.get('b'), kept.get('c')]).toEqual([1, undefined, 3]);
  // Set anew it is used anew.
  kept.set('a', 4);
  kept.set('d', 5);
  expect([kept.get('a'), kept.get('c'), kept.get('d')]).toEqual([4, undefined, 5]);
});
