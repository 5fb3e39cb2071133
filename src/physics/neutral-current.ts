import { mustNotBeNegative } from '../quantity/must-be';

/** How the two legs of a panel or of a shared-neutral circuit are fed. */
export type LegFeed =
  | '120/240' // two legs of opposite phase: the usual house
  | '120-both-legs' // one 120 V source feeding both legs in step
  | '120/208'; // two legs of a three-phase building

/**
 * Current in a shared neutral, A, of loads at unity power factor on legs A and B: |A - B| at 120/240 V;
 * A + B when one 120 V source feeds both legs; sqrt(A^2 + B^2 - A B) at 120/208 V.
 */
export function neutralAmps(given: { legAAmps: number; legBAmps: number; feed: LegFeed }): number {
  mustNotBeNegative('legAAmps', given.legAAmps, 'A');
  mustNotBeNegative('legBAmps', given.legBAmps, 'A');
  const { legAAmps: a, legBAmps: b } = given;
  if (given.feed === '120/240') return Math.abs(a - b);
  if (given.feed === '120-both-legs') return a + b;
  return Math.sqrt(a * a + b * b - a * b);
}
