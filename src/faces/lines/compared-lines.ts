import { compareLines } from '../compare-lines';
import { WHAT_IF, type WhatIfSaid } from '../screen/views/what-if';

/** No line of print is broken for a reader aloud. */
const UNBROKEN = 2000;

/** Two plans in sentences, each saying which it is. */
export function comparedLines(
  said: WhatIfSaid,
  sides = { before: 'Before', after: 'After' },
): string[] {
  if (typeof said === 'string') return [WHAT_IF[said]];
  return compareLines(said, { width: UNBROKEN, stand: 'stacked', sides })
    .map((line) => line.trim())
    .filter((line) => line !== '');
}
