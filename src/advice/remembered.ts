import type { Resolved } from '../interview/questions/resolve';
import { AskedFor, foundAs } from './asked-for';

/** One answer asked for, and where to go by what it was found to be; or, at the end, what was made. */
interface Step<T> {
  id?: string;
  readonly next: Map<string, Step<T>>;
  made?: { readonly value: T };
}

/** How many results are kept before all are forgotten: enough for the trials of a few answers. */
const KEPT = 400;

/**
 * A function of what is known that is worked out once for all answers it does not ask for. It must rest on nothing else,
 * so it asks in the same order as long as it finds the same; what was asked is a path, and what was made stands at its end.
 */
export function remembered<T>(make: (known: Resolved) => T): (known: Resolved) => T {
  let root: Step<T> = { next: new Map() };
  let kept = 0;
  return (known) => {
    let at: Step<T> | undefined = root;
    while (at !== undefined) {
      if (at.made !== undefined) return at.made.value;
      at = at.id === undefined ? undefined : at.next.get(foundAs(known, at.id));
    }
    const watched = new AskedFor(known);
    const value = make(watched);
    if (kept >= KEPT) {
      root = { next: new Map() };
      kept = 0;
    }
    let end = root;
    for (const id of watched.asked) {
      end.id ??= id;
      if (end.id !== id) throw new Error(`asked for ${id} where it asked for ${end.id} before`);
      const found = foundAs(known, id);
      const next = end.next.get(found) ?? { next: new Map() };
      end.next.set(found, next);
      end = next;
    }
    end.made = { value };
    kept += 1;
    return value;
  };
}
