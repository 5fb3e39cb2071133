import { expect, test } from 'vitest';
import { firstHundredth, LONG_MS, together } from './first-hundredth';

test.each(together.storage)(
  '%s: the first hundredth of the soak',
  async (name) => expect((await firstHundredth(name)).faults).toEqual([]),
  LONG_MS,
);
