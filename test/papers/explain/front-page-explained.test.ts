import { expect, test } from 'vitest';
import { answersOf, planOf } from '../../households/read-household';
import { onFirstPage } from './on-first-page';
import { roundedOtherwise } from './one-rounding';

// The four demo homes stand in arithmetic.test.ts, where their plans are.
test.each(['gulf-cove', 'orchard-bend', 'upstairs-flat'])(
  'every figure on the first page of %s, with its ways on, can be explained, and is shown with one rounding',
  (name) => {
    const { shown, unexplained } = onFirstPage(planOf(name, {}, 5));
    expect(shown.length).toBeGreaterThan(3);
    expect(unexplained).toEqual([]);
    expect(roundedOtherwise(planOf(name, {}, 5), answersOf(name))).toEqual([]);
  },
);
