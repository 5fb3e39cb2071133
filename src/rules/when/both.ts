import type { Trigger } from '../rule';

/** Speaks only when both do, in the words of the first; careful as soon as one of them is. */
export function both(first: Trigger | null, second: Trigger | null): Trigger | null {
  if (first === null || second === null) return null;
  const asks = first.careful ? first.asks : second.asks;
  return { because: first.because, careful: first.careful || second.careful, asks };
}
