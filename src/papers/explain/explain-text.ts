import type { Explainable } from '../../plan/explain/explainable';
import type { Words } from '../../words/words';
import { arithmetic } from './arithmetic';
import { wrapped } from './wrapped';

export interface Reader {
  readonly asked: (questionId: string) => string | null;
  readonly words: Words;
  readonly columns: number;
}

/** One figure with its range, and how it was worked out. */
export function explainText({ id, figure }: Explainable, reader: Reader): string[] {
  return [titled({ id, figure }, reader), [''], arithmetic({ id, figure, ...reader })].flat();
}

/** The figures that can be explained: id, value and what it is. */
export function figureList(all: readonly Explainable[], { words, columns }: Reader): string[] {
  const width = Math.max(...all.map(({ id }) => id.length)) + 2;
  return all.flatMap(({ id, figure }) =>
    wrapped(
      `${words.explain.title(id)}: ${words.explain.said(id, figure)}`,
      ' '.repeat(width),
      columns,
      0,
    ).map((line, i) => (i === 0 ? id.padEnd(width) + line.trimStart() : line)),
  );
}

function titled({ id, figure }: Explainable, { words, columns }: Reader): string[] {
  return wrapped(`${words.explain.title(id)}: ${words.explain.said(id, figure)}`, '', columns);
}
