import { expect, test } from 'vitest';
import { LastOnes } from '../../src/quantity/last-ones';

test('what was put or found last is looked at first, and the oldest goes', () => {
  const kept = new LastOnes<{ id: string; n: number }>(2);
  const of = (id: string) => kept.find((one) => one.id === id)?.n;
  expect(kept.put({ id: 'a', n: 1 })).toEqual({ id: 'a', n: 1 });
  kept.put({ id: 'b', n: 2 });
  expect(kept.find(() => true)!.id).toBe('b');
  expect(of('a')).toBe(1);
  kept.put({ id: 'c', n: 3 });
  expect([of('b'), of('a'), of('c')]).toEqual([undefined, 1, 3]);
});
