import { expect, test } from 'vitest';
import { emptyTally, tryPart } from '../../soak/part';
import { sheets } from '../../soak/parts/sheets';

const HOMES = 20;

test(`the sheets of ${HOMES} homes made up by chance: on their pages, whole, once, and nothing private`, async () => {
  const tally = emptyTally();
  for (let seed = 1; seed <= HOMES; seed++) await tryPart(sheets, seed, tally);
  expect(tally.faults).toEqual([]);
  expect(Object.values(tally.spoke).every((count) => count === HOMES)).toBe(true);
}, 120_000);
