import { expect, test } from 'vitest';
import { held } from './never';
import { emptyTally, tryPart } from './part';
import { parts } from './parts';

/** Of every so many tries of a whole run one is made here; `npm run soak` makes all. */
const SHARE = 100;

const tally = emptyTally();

test.each(Object.entries(parts))(
  '%s: the first hundredth of the soak',
  async (_, part) => {
    const count = Math.max(2, Math.ceil(part.whole / SHARE));
    for (let seed = 1; seed <= count; seed++) await tryPart(part, seed, tally, 'light');
    expect(tally.faults).toEqual([]);
  },
  240_000,
);

test('whatever is held has spoken of some of them', () => {
  const dumb = Object.keys(held).filter((what) => (tally.spoke[what] ?? 0) < 3);
  expect(dumb).toEqual([]);
});
