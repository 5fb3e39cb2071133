import type { Resolved } from '../interview/questions/resolve';
import { AnswerPaths } from './answer-paths';
import { AskedFor } from './asked-for';

/** How many results are kept before those not asked for since are forgotten; at most twice as many stand. */
const KEPT = 200;

/**
 * A function of what is known that is worked out once for all answers it does not ask for. It must rest on nothing else,
 * so it asks in the same order as long as it finds the same.
 */
export function remembered<T>(make: (known: Resolved) => T): (known: Resolved) => T {
  let now = new AnswerPaths<T>();
  let before = new AnswerPaths<T>();
  let kept = 0;
  const keep = (known: Resolved, asked: readonly string[], made: T): T => {
    if (kept >= KEPT) {
      [before, now] = [now, new AnswerPaths()];
      kept = 0;
    }
    now.put(known, asked, made);
    kept += 1;
    return made;
  };
  return (known) => {
    const here = now.find(known);
    if (here !== undefined) return here.made;
    const there = before.find(known);
    if (there !== undefined) return keep(known, before.askedOn(known), there.made);
    const watched = new AskedFor(known);
    const made = make(watched);
    // As it was asked until now: what was made may ask for more when it is looked at.
    return keep(known, [...watched.asked], made);
  };
}
