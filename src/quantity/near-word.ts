/** A word may be this far from what was meant: changes, and never more than a third of it. */
const MOST_CHANGES = 2;

/** The word of a list that was probably meant; null where none is near. */
export function nearWord(typed: string, words: readonly string[]): string | null {
  const word = typed.toLowerCase();
  const most = Math.min(MOST_CHANGES, Math.ceil(word.length / 3));
  const ranked = words
    .map((one) => ({ one, far: changes(word, one) }))
    .filter(({ far }) => far <= most)
    .sort((a, b) => a.far - b.far);
  return ranked[0]?.one ?? null;
}

/**
 * Letters to insert, take out, change or swap with their neighbor to come from one word to the other.
 * Source: Damerau, "A technique for computer detection and correction of spelling errors", 1964.
 */
export function changes(from: string, to: string): number {
  let [before, row] = [[] as number[], Array.from({ length: to.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      next[j] = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + same);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) next[j] = Math.min(next[j]!, before[j - 2]! + 1);
    }
    [before, row] = [row, next];
  }
  return row[to.length]!;
}
