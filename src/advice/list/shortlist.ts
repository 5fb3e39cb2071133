import type { Weighed } from './unbeaten';

/** Lines a household can take in. */
export const MOST_LINES = 8;

/**
 * At most so many of the unbeaten: the first, the last and those that must stay are kept, and of the others the one goes first
 * that stands nearest to the next cheaper line, by price.
 */
export function shortlist(
  all: readonly Weighed[],
  mustStay: readonly Weighed[],
  most = MOST_LINES,
): Weighed[] {
  const lines = [...all];
  while (lines.length > most) {
    const spare = lines
      .map((line, i) => ({ line, i }))
      .filter(({ line, i }) => i > 0 && i < lines.length - 1 && !mustStay.includes(line));
    if (spare.length === 0) break;
    const step = ({ line, i }: { line: Weighed; i: number }) =>
      (line.usd - lines[i - 1]!.usd) / Math.max(1, line.usd);
    const least = spare.reduce((a, b) => (step(b) < step(a) ? b : a));
    lines.splice(least.i, 1);
  }
  return lines;
}
