import { expect, test } from 'vitest';
import { onceMade } from '../../src/quantity/once-made';

test('is worked out when it is asked for first, and no second time', () => {
  let count = 0;
  const get = onceMade(() => {
    count += 1;
    return null;
  });
  expect(count).toBe(0);
  expect([get(), get()]).toEqual([null, null]);
  expect(count).toBe(1);
});
