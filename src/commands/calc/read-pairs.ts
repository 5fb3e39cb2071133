export type Pairs =
  | { readonly ok: true; readonly pairs: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly says: string };

/**
 * `key=value` words of the command line. A word without "=" belongs to the value before it, so that
 * `head=84 ft` needs no quotes. The same key twice is refused: nobody could say which one counts.
 */
export function readPairs(words: readonly string[]): Pairs {
  const pairs = new Map<string, string>();
  let last: string | null = null;
  for (const word of words) {
    const at = word.indexOf('=');
    if (at > 0) {
      const key = word.slice(0, at).trim();
      if (pairs.has(key)) return { ok: false, says: `${key} is given twice.` };
      pairs.set(key, word.slice(at + 1));
      last = key;
    } else if (at < 0 && last !== null) {
      pairs.set(last, `${pairs.get(last)} ${word}`);
    } else {
      return { ok: false, says: `"${word}" is not key=value.` };
    }
  }
  return { ok: true, pairs };
}
