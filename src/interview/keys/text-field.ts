import type { Key } from './key';

/** A line of typed text and the cursor in it, counted in graphemes (what a person calls a letter). */
export interface TextField {
  readonly text: string;
  readonly cursor: number;
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The graphemes of a text, in order. */
export function graphemes(text: string): string[] {
  return Array.from(segmenter.segment(text), (s) => s.segment);
}

/** A field that holds `text`, cursor at its end. */
export function fieldOf(text: string): TextField {
  return { text, cursor: graphemes(text).length };
}

/** No answer is near as long; every letter more would slow each next one down. */
export const LONGEST_FIELD = 300;

/** True when nothing more goes into the field. */
export function isFull({ text }: TextField): boolean {
  // A letter of two code units may have been left out at the end.
  return text.length >= LONGEST_FIELD - 1;
}

/** Put `typed` in at the cursor, as much as the field holds. Control characters and line ends become single spaces. */
export function insertText(field: TextField, typed: string): TextField {
  if (isFull(field)) return field;
  const clean = typed
    .slice(0, LONGEST_FIELD)
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .slice(0, LONGEST_FIELD - field.text.length)
    .replace(/[\ud800-\udbff]$/, '');
  const parts = graphemes(field.text);
  const before = parts.slice(0, field.cursor).join('') + clean;
  const after = parts.slice(field.cursor).join('');
  return { text: before + after, cursor: graphemes(before).length };
}

/** Take away the letter left of the cursor. */
export function eraseLeft(field: TextField): TextField {
  if (field.cursor === 0) return field;
  const parts = graphemes(field.text);
  parts.splice(field.cursor - 1, 1);
  return { text: parts.join(''), cursor: field.cursor - 1 };
}

/** Move the cursor by `steps` letters, stopping at either end. */
export function moveCursor(field: TextField, steps: number): TextField {
  const last = graphemes(field.text).length;
  return { ...field, cursor: Math.min(last, Math.max(0, field.cursor + steps)) };
}

/** Take away the letters from one place up to another; the cursor stands where they were. */
export function eraseBetween(field: TextField, from: number, to: number): TextField {
  const parts = graphemes(field.text);
  return { text: [...parts.slice(0, from), ...parts.slice(to)].join(''), cursor: from };
}

/** Take away the letter right of the cursor. */
export function eraseRight(field: TextField): TextField {
  return eraseBetween(field, field.cursor, field.cursor + 1);
}

/** Where the word left of the cursor begins. */
export function wordLeft({ text, cursor }: TextField): number {
  const parts = graphemes(text);
  let at = cursor;
  while (at > 0 && isSpace(parts[at - 1])) at -= 1;
  while (at > 0 && !isSpace(parts[at - 1])) at -= 1;
  return at;
}

/** Where the word right of the cursor ends. */
export function wordRight({ text, cursor }: TextField): number {
  const parts = graphemes(text);
  let at = cursor;
  while (at < parts.length && isSpace(parts[at])) at += 1;
  while (at < parts.length && !isSpace(parts[at])) at += 1;
  return at;
}

function isSpace(letter: string | undefined): boolean {
  return letter !== undefined && /^\s$/.test(letter);
}

/** The field after an editing key. */
export function editField({ field }: { readonly field: TextField }, key: Key): TextField {
  switch (key.name) {
    case 'text':
      return insertText(field, key.text);
    case 'backspace':
      return eraseLeft(field);
    case 'left':
      return moveCursor(field, -1);
    case 'right':
      return moveCursor(field, 1);
    case 'home':
      return { ...field, cursor: 0 };
    case 'end':
      return fieldOf(field.text);
    case 'delete':
      return eraseRight(field);
    case 'word-left':
      return moveCursor(field, wordLeft(field) - field.cursor);
    case 'word-right':
      return moveCursor(field, wordRight(field) - field.cursor);
    case 'erase-word':
      return eraseBetween(field, wordLeft(field), field.cursor);
    case 'erase-right':
      return eraseBetween(field, field.cursor, graphemes(field.text).length);
    case 'ctrl-u':
      return fieldOf('');
    default:
      return field;
  }
}
