import type { Known, Resolved } from '../interview/questions/resolve';
import { ALL, foundAs, textOf } from './asked-for';

/** What an answer was found to be; a text where somebody went through them all. */
type Found = Known | string | undefined;

/** Answers asked for one after another, found alike by all that was made below, and what comes then. */
interface Stretch<T> {
  asked: readonly string[];
  found: readonly Found[];
  end: Made<T> | Fork<T>;
}

interface Made<T> {
  readonly made: T;
}

/** One answer more, and where to go by what it is found to be. */
interface Fork<T> {
  readonly asks: string;
  readonly next: Map<string, Stretch<T>>;
}

/**
 * What was made, by the answers asked for while it was made and what they were found to be. As long as the same is found the
 * same is asked next, so that each is the end of a path, and paths that begin alike are one until they part.
 */
export class AnswerPaths<T> {
  private root: Stretch<T> | undefined;

  /** What was made where all it asked for was found to be what is known now. */
  find(known: Resolved): Made<T> | undefined {
    let at = this.root;
    while (at !== undefined) {
      if (alike(at, known) < at.asked.length) return undefined;
      const { end }: Stretch<T> = at;
      if ('made' in end) return end;
      at = end.next.get(foundAs(known, end.asks));
    }
    return undefined;
  }

  /** What is asked for on the way to what `find` finds, in that order. */
  askedOn(known: Resolved): string[] {
    const asked: string[] = [];
    let at = this.root;
    while (at !== undefined) {
      asked.push(...at.asked);
      const { end }: Stretch<T> = at;
      if ('made' in end) return asked;
      asked.push(end.asks);
      at = end.next.get(foundAs(known, end.asks));
    }
    return asked;
  }

  /** Keep what was made while these were asked for. Throws where after the same answers another was asked for before. */
  put(known: Resolved, asked: readonly string[], made: T): void {
    if (this.root === undefined) {
      this.root = lastStretch(known, asked, made);
      return;
    }
    let at = this.root;
    for (let from = 0; ; ) {
      const count = alike(at, known);
      if (count < at.asked.length) fork(at, count);
      expectSame(at.asked, asked.slice(from, from + count));
      from += count;
      const { end } = at;
      if ('made' in end) {
        at.end = { made };
        return;
      }
      expectSame([end.asks], asked.slice(from, from + 1));
      from += 1;
      const found = foundAs(known, end.asks);
      const next = end.next.get(found);
      if (next === undefined) {
        end.next.set(found, lastStretch(known, asked.slice(from), made));
        return;
      }
      at = next;
    }
  }
}

function lastStretch<T>(known: Resolved, asked: readonly string[], made: T): Stretch<T> {
  return { asked, found: asked.map((id) => findIn(known, id)), end: { made } };
}

/** Part a stretch at its answer number `at`: what comes behind it goes one way from there. */
function fork<T>(stretch: Stretch<T>, at: number): void {
  const { asked, found, end } = stretch;
  const behind = { asked: asked.slice(at + 1), found: found.slice(at + 1), end };
  stretch.asked = asked.slice(0, at);
  stretch.found = found.slice(0, at);
  stretch.end = { asks: asked[at]!, next: new Map([[textOf(found[at]), behind]]) };
}

/** How many of a stretch, from its first on, are known to be what they were found to be. */
function alike<T>({ asked, found }: Stretch<T>, known: Resolved): number {
  let count = 0;
  while (count < asked.length && same(found[count], findIn(known, asked[count]!))) count++;
  return count;
}

const findIn = (known: Resolved, id: string): Found =>
  id === ALL ? foundAs(known, ALL) : known.get(id);

function same(a: Found, b: Found): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object') return false;
  if (a.how !== b.how) return false;
  if (a.value === b.value) return true;
  return typeof a.value === 'object' && textOf(a) === textOf(b);
}

function expectSame(before: readonly string[], now: readonly string[]): void {
  const at = before.findIndex((id, i) => id !== now[i]);
  if (at >= 0) throw new Error(`asked for ${now[at]} where it asked for ${before[at]} before`);
}
