import type { Row } from '../rows';
import type { State } from '../state';
import type { Key } from './key';
import {
  eraseBetween,
  eraseLeft,
  eraseRight,
  fieldOf,
  graphemes,
  insertText,
  moveCursor,
  wordLeft,
  wordRight,
} from './text-field';

/** A letter typed while a line below the field is highlighted is meant for the field. */
export function typesIntoField(rows: readonly Row[], key: Key): boolean {
  return rows[0]?.kind === 'field' && key.name === 'text' && !['?', ' '].includes(key.text);
}

/** `?` opens help: it is part of no number, ZIP code or name. A pasted one stays in the text. */
export function helpFor(state: State, key: Key): Partial<State> {
  const asks = key.name === 'text' && key.text === '?' && !key.pasted;
  return asks ? { view: 'help', row: 0, scroll: 0, field: state.field } : {};
}

/** The field after an editing key. */
export function editField(state: Pick<State, 'field'>, key: Key): State['field'] {
  switch (key.name) {
    case 'text':
      return insertText(state.field, key.text);
    case 'backspace':
      return eraseLeft(state.field);
    case 'left':
      return moveCursor(state.field, -1);
    case 'right':
      return moveCursor(state.field, 1);
    case 'home':
      return { ...state.field, cursor: 0 };
    case 'end':
      return fieldOf(state.field.text);
    case 'delete':
      return eraseRight(state.field);
    case 'word-left':
      return moveCursor(state.field, wordLeft(state.field) - state.field.cursor);
    case 'word-right':
      return moveCursor(state.field, wordRight(state.field) - state.field.cursor);
    case 'erase-word':
      return eraseBetween(state.field, wordLeft(state.field), state.field.cursor);
    case 'erase-right':
      return eraseBetween(state.field, state.field.cursor, graphemes(state.field.text).length);
    case 'ctrl-u':
      return fieldOf('');
    default:
      return state.field;
  }
}
