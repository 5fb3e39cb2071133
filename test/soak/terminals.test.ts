import { expect, test } from 'vitest';
import { firstHundredth, LONG_MS, together } from './first-hundredth';

test.each(together.terminals)(
  '%s: the first hundredth of the soak',
  async (name) => {
    const { faults, spoke } = await firstHundredth(name);
    expect(faults).toEqual([]);
    // What is held speaks of some of them.
    if (name === 'kills') expect(spoke['killed with answers on the disk']).toBeGreaterThan(0);
  },
  LONG_MS,
);
