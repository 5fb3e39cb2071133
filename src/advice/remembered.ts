import type { Resolved } from '../interview/questions/resolve';
import { AskedFor, foundAs } from './asked-for';

/** One answer asked for, and where to go by what it was found to be; or, at the end, what was made. */
interface Step<T> {
  id?: string;
  readonly next: Map<string, Step<T>>;
  made?: Made<T>;
}

interface Made<T> {
  readonly value: T;
  /** What was asked for until it was made, in that order; what it holds may ask for more later. */
  readonly asked: readonly string[];
}

/** How many results are kept before those not asked for since are forgotten; at most twice as many stand. */
const KEPT = 200;

/**
 * A function of what is known that is worked out once for all answers it does not ask for. It must rest on nothing else,
 * so it asks in the same order as long as it finds the same; what was asked is a path, and what was made stands at its end.
 */
export function remembered<T>(make: (known: Resolved) => T): (known: Resolved) => T {
  let now: Step<T> = { next: new Map() };
  let before: Step<T> = { next: new Map() };
  let kept = 0;
  const keep = (known: Resolved, made: Made<T>): T => {
    if (kept >= KEPT) {
      [before, now] = [now, { next: new Map() }];
      kept = 0;
    }
    endOf(now, made.asked, known).made = made;
    kept += 1;
    return made.value;
  };
  return (known) => {
    const here = madeIn(now, known);
    if (here !== undefined) return here.value;
    const there = madeIn(before, known);
    if (there !== undefined) return keep(known, there);
    const watched = new AskedFor(known);
    const value = make(watched);
    return keep(known, { value, asked: [...watched.asked] });
  };
}

/** What was made where all it asked for was found to be what is known now. */
function madeIn<T>(root: Step<T>, known: Resolved): Made<T> | undefined {
  let at: Step<T> | undefined = root;
  while (at !== undefined) {
    if (at.made !== undefined) return at.made;
    at = at.id === undefined ? undefined : at.next.get(foundAs(known, at.id));
  }
  return undefined;
}

/** The step at which what was asked for ends. */
function endOf<T>(root: Step<T>, asked: Iterable<string>, known: Resolved): Step<T> {
  let end = root;
  for (const id of asked) {
    end.id ??= id;
    if (end.id !== id) throw new Error(`asked for ${id} where it asked for ${end.id} before`);
    const found = foundAs(known, id);
    const next = end.next.get(found) ?? { next: new Map() };
    end.next.set(found, next);
    end = next;
  }
  return end;
}
