import type { FigureId } from '../../plan/explain/figure-ids';
import { atEnd } from '../../quantity/at-end';
import type { Figure } from '../../quantity/figure';
import { operandsOf } from '../../quantity/made';
import type { Words } from '../../words/words';
import { placesByHand, plainPlaces, shownFor, stepOf } from './by-hand';
import { wrapped } from './wrapped';

export interface ToExplain {
  readonly id: FigureId;
  readonly figure: Figure;
  /** What a question is about, as in the list of answers. */
  readonly asked: (questionId: string) => string | null;
  readonly words: Words;
  readonly columns: number;
}

/** What a figure is; empty where its steps are all there is to say. */
function nameOf({ name, is }: Figure, { explain }: Words): string {
  if (name !== undefined) return explain.figureName(name);
  return is === undefined ? '' : explain.stepName(is);
}

/**
 * The arithmetic of a figure, line by line: each step under the one it serves, down to answers and tables. Then the same
 * of the ends of its range, where it has one.
 */
export function arithmetic({ id, figure, asked, words, columns }: ToExplain): string[] {
  const { explain } = words;
  const ends = (['low', 'high'] as const).filter((end) => figure[end] !== figure.value);
  const roots = [figure, ...ends.map((end) => atEnd(figure, end))];
  const places = placesByHand(...roots);
  const placesOf = (one: Figure) => places.get(one) ?? plainPlaces(one);
  const print = (one: Figure) => explain.exactly(one.value, one.unit, placesOf(one));
  const lines: string[] = [];
  const told = new Set<string>();
  const tell = (one: Figure, depth: number) => {
    const given = shownFor(one);
    const write = (text: string) => lines.push(...wrapped(text, '  '.repeat(depth), columns));
    const { source, end } = given;
    const name = nameOf(given, words);
    const made = stepOf(given);
    const question = source.question === undefined ? null : asked(source.question);
    const head = explain.head(print(given), name, end);
    const origin = { ...source, asked: question };
    const here = made === undefined ? explain.from(print(given), name, origin, end) : head;
    if (told.has(here)) {
      write(explain.asAbove(head));
      return;
    }
    if (name !== '' || made === undefined) told.add(here);
    if (made === undefined || depth > 0) write(here);
    if (made === undefined) return;
    write(explain.step(print(given), made, print));
    for (const one of new Set(operandsOf(made))) tell(one, depth + 1);
  };
  for (const [i, root] of roots.entries()) {
    if (i > 0) lines.push('', explain.endTitle(ends[i - 1]!));
    tell(root, 0);
    const [exact, shown] = [print(root), explain.shownAs(id, root.value, root.unit)];
    if (exact !== shown) lines.push(...wrapped(explain.shownElsewhere(exact, shown), '', columns));
  }
  return lines;
}
