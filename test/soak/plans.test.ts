import { expect, test } from 'vitest';
import { answersOf } from '../households/read-household';
import { firstHundredth, LONG_MS, together } from './first-hundredth';
import { held } from './never';
import { heldOfSheets } from './never/of-sheets';
import { emptyTally } from './part';
import { parts } from './parts';
import { tryPlan } from './try-plan';

const DEMOS = ['birch-street', 'ridge-road', 'tower-six', 'mill-lane'];

const tally = emptyTally();

test.each(together.plans)(
  '%s: the first hundredth of the soak',
  async (name) => expect((await firstHundredth(name, tally)).faults).toEqual([]),
  LONG_MS,
);

test('whatever is held has spoken of some of them, or of the demo homes', () => {
  // Few homes made up by chance keep cans to fill.
  for (const name of DEMOS) tryPlan(name, answersOf(name), tally);
  for (const gallons of [0, 5]) {
    const cans = { ...answersOf('birch-street'), 'gasoline-gallons': gallons };
    tryPlan(`birch-street with ${gallons} gal`, cans, tally);
  }
  expect(tally.faults).toEqual([]);
  const dumb = Object.keys(held).filter((what) => (tally.spoke[what] ?? 0) < 3);
  expect(dumb).toEqual([]);
});

const SHEETS = 20;

test(`every sheet of at least ${SHEETS} homes: on its pages, whole, once, and nothing private`, () => {
  const seldom = Object.keys(heldOfSheets).filter((what) => (tally.spoke[what] ?? 0) < SHEETS);
  expect(seldom).toEqual([]);
});

test('every part of the soak has its first hundredth in a test', () => {
  expect(Object.values(together).flat().sort()).toEqual(Object.keys(parts).sort());
});
