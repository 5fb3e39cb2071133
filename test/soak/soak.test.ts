import { expect, test } from 'vitest';
import { answersOf } from '../households/read-household';
import { held } from './never';
import { emptyTally, tryPart } from './part';
import { parts } from './parts';
import { tryPlan } from './try-plan';

/** Of every so many tries of a whole run one is made here; `npm run soak` makes all. */
const SHARE = 100;

const DEMOS = ['birch-street', 'ridge-road', 'tower-six', 'mill-lane'];

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

test('whatever is held has spoken of some of them, or of the demo homes', () => {
  // Few homes made up by chance keep cans to fill.
  for (const name of DEMOS) tryPlan(name, answersOf(name), tally);
  expect(tally.faults).toEqual([]);
  const dumb = Object.keys(held).filter((what) => (tally.spoke[what] ?? 0) < 3);
  expect(dumb).toEqual([]);
});
