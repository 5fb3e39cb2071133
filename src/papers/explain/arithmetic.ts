import type { Figure } from '../../quantity/figure';
import { type Made, operandsOf } from '../../quantity/made';
import type { Words } from '../../words/words';
import { placesByHand, plainPlaces } from './by-hand';
import { wrapped } from './wrapped';

export interface ToExplain {
  readonly figure: Figure;
  /** What a question is about, as in the list of answers. */
  readonly asked: (questionId: string) => string | null;
  readonly words: Words;
  readonly columns: number;
}

/** The arithmetic of a figure, line by line: each step under the one it serves, down to answers and tables. */
export function arithmetic({ figure, asked, words, columns }: ToExplain): string[] {
  const { explain } = words;
  const lines: string[] = [];
  const told = new Set<string>();
  const tell = (of: Figure, places: number, depth: number) => {
    const indent = '  '.repeat(depth);
    const write = (text: string) => lines.push(...wrapped(text, indent, columns));
    const print = (one: Figure, digits: number) => explain.exactly(one.value, one.unit, digits);
    const { source } = of;
    const name = of.name ?? (of.is === undefined ? '' : explain.stepName(of.is));
    const shown = print(of, places);
    const made = stepOf(of);
    const question = source.question === undefined ? null : asked(source.question);
    const head = explain.head(shown, name);
    const here =
      made === undefined ? explain.from(shown, name, { ...source, asked: question }) : head;
    if (told.has(here)) {
      write(explain.asAbove(head));
      return;
    }
    if (name !== '' || made === undefined) told.add(here);
    if (made === undefined || depth > 0) write(here);
    if (made === undefined) return;
    const digits = placesByHand(made, of.value, places);
    write(explain.step(shown, made, (one) => print(one, digits.get(one)!)));
    for (const one of new Set(operandsOf(made))) tell(one, digits.get(one)!, depth + 1);
  };
  tell(figure, plainPlaces(figure.value), 0);
  return lines;
}

/** The step to be shown: one that changes nothing is passed over. */
function stepOf({ made, value }: Figure): Made | undefined {
  const same =
    made?.of.length === 1 && operandsOf(made).length === 1 && made.of[0]!.value === value;
  return same ? stepOf(made.of[0]!) : made;
}
