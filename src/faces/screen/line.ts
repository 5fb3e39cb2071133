import stringWidth from 'string-width';
import { graphemes } from '../../interview/keys/text-field';
import { visible } from '../../quantity/visible';

/** A piece of a line with its looks. Meaning never hangs on the looks alone. */
export interface Span {
  readonly text: string;
  readonly bold?: boolean;
  readonly dim?: boolean;
  readonly tone?: 'accent' | 'alarm' | 'caution';
  /** The same for every home: a shared screen need not hide it. */
  readonly common?: boolean;
  /** Colors stand in the text itself, as the plan's have them. */
  readonly painted?: boolean;
  /** The typed text of a field, drawn by the text-input component. */
  readonly field?: boolean;
}

/** One line of the screen, left to right. */
export type Line = readonly Span[];

export const EMPTY: Line = [];

/** ASCII, and the dashes, dots, lines and blocks that we draw with: one column each. */
const ONE_COLUMN = /^[\x20-\x7e·–—•…│─-╿▀-▟]*$/;

/** Columns a text takes. */
export function widthOf(text: string): number {
  return ONE_COLUMN.test(text) ? text.length : stringWidth(text);
}

export function lineWidth(line: Line): number {
  return line.reduce((sum, span) => sum + widthOf(span.text), 0);
}

/** Break a text at spaces so that no line is wider than `width`; a longer word is cut. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of visible(text)
    .split(/\s+/)
    .flatMap((w) => chop(w, width))) {
    if (word === '') continue;
    if (line === '') line = word;
    else if (widthOf(line) + 1 + widthOf(word) <= width) line += ` ${word}`;
    else {
      lines.push(line);
      line = word;
    }
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines;
}

/** Paragraphs stay apart: a blank line between them. */
export function wrapParagraphs(text: string, width: number): string[] {
  return text
    .trim()
    .split(/\n\s*\n/)
    .flatMap((paragraph, i) => [...(i > 0 ? [''] : []), ...wrapText(paragraph, width)]);
}

/** A text cut to `width` columns, its end marked; after a whole word where that costs less than half of it. */
export function shorten(text: string, width: number, mark: string): string {
  if (widthOf(text) <= width) return text;
  return wholeWords(text, takeWidth(text, width - widthOf(mark))) + mark;
}

/** The beginning of a text without the word it was cut in, unless that is most of it. */
export function wholeWords(text: string, beginning: string): string {
  const inWord = /\S$/.test(beginning) && /\S/.test(text[beginning.length] ?? ' ');
  const last = beginning.lastIndexOf(' ');
  return (inWord && last >= beginning.length / 2 ? beginning.slice(0, last) : beginning).trimEnd();
}

/** As many letters from the left as fit in `width` columns. */
export function takeWidth(text: string, width: number): string {
  let taken = '';
  let used = 0;
  for (const letter of graphemes(text)) {
    used += widthOf(letter);
    if (used > width) break;
    taken += letter;
  }
  return taken;
}

/** Lines of one look. */
export function styled(texts: readonly string[], look: Omit<Span, 'text'> = {}): Line[] {
  return texts.map((text) => [{ text, ...look }]);
}

function chop(word: string, width: number): string[] {
  if (widthOf(word) <= width) return [word];
  const pieces: string[] = [];
  for (let rest = word; rest !== ''; ) {
    const piece = takeWidth(rest, width) || graphemes(rest)[0]!;
    pieces.push(piece);
    rest = rest.slice(piece.length);
  }
  return pieces;
}
