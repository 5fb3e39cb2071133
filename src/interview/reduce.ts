import { accept, onAct, submitTyped } from './act';
import { end } from './end';
import type { Event } from './event';
import { leaveCheck, openFromList, takeNext } from './go-on';
import type { Key } from './keys/key';
import { isStray, onListText } from './keys/list-keys';
import { moveRow, moveTopic } from './keys/move-row';
import { editField, fieldOf, isFull } from './keys/text-field';
import { offered, questionAt } from './questions/relevant';
import { type Row, rowsOf } from './rows';
import type { Context, State } from './state';
import { takeOutside } from './take-outside';
import { words } from './words';

/** The interview after an event. Pure; an ended interview stays as it is. */
export function reduce(context: Context, state: State, event: Event): State {
  if (state.ending !== null) return state;
  switch (event.type) {
    case 'key':
      return onKey(context, state, event.key);
    case 'answer':
      return accept(context, { ...state, notice: null }, event.answer);
    case 'typed':
      return submitTyped(context, { ...state, field: fieldOf(event.text) });
    case 'act':
      return onAct(context, state, event.act);
    case 'open':
      return openFromList(context, state, event.question);
    case 'next':
      return takeNext(context, state, event.next);
    case 'scroll':
      return { ...state, scroll: Math.max(0, state.scroll + event.by) };
    case 'notice':
      return { ...state, notice: event.text };
    case 'unsaved':
      return { ...state, unsaved: event.text };
    case 'outside':
      return takeOutside(context, state, event);
  }
}

/** What may be done while the next question is looked for. */
const HEARD_WAITING: readonly Key['name'][] = ['ctrl-c', 'ctrl-s', 'escape'];

/** The interview after a key. */
function onKey(context: Context, state: State, key: Key): State {
  if (state.view === 'wait' && !HEARD_WAITING.includes(key.name)) return state;
  const rows = rowsOf(context, state);
  const here = rows[state.row];
  if (key.name === 'enter' && isStray(state)) return { ...state, digits: '' };
  const still: State = key.name === 'text' ? state : { ...state, digits: '' };
  switch (key.name) {
    case 'ctrl-c':
      return end(context, state, 'interrupted');
    case 'ctrl-s':
      return onAct(context, still, 'stop');
    case 'escape':
      return state.view === 'check' ? leaveCheck(context, state) : onAct(context, still, 'back');
    case 'tab':
      return state.view === 'ask' ? onAct(context, still, 'not-sure') : still;
    case 'later':
      return state.view === 'ask' ? onAct(context, still, 'later') : still;
    case 'up':
    case 'down':
    case 'page-up':
    case 'page-down':
      return moveRow(still, rows.length, key.name);
    case 'enter':
      return onEnter(context, state);
    default:
      break;
  }
  if (state.view === 'check') return moveTopic(context, still, rows, key);
  if (here?.kind !== 'field' && !typesIntoField(rows, key)) {
    return key.name === 'text' ? onListText(context, state, key) : still;
  }
  const field = editField(state, key);
  return {
    ...still,
    row: 0,
    error: null,
    notice: isFull(field) ? words.fieldFull : null,
    field,
    ...helpFor(state, key),
  };
}

function onEnter(context: Context, before: State): State {
  const state: State = { ...before, notice: null, digits: '' };
  const row = rowsOf(context, state)[state.row];
  if (row === undefined) return { ...state, error: unmarked(context, state) };
  if (row.kind === 'field') return submitTyped(context, state);
  if (row.kind === 'act') return onAct(context, state, row.act);
  if (row.kind === 'answer') return openFromList(context, state, row.id);
  const question = questionAt(context, state.at);
  if (question.kind === 'choice') return accept(context, state, row.id);
  const shown = offered(context, state, question).map((c) => c.id);
  const ticked = state.ticked.filter((id) => shown.includes(id));
  if (ticked.length === 0) return { ...state, error: words.tickHere(state.row + 1) };
  // A number was typed and the line is not ticked: whoever types fast takes it for ticked.
  if (before.digits !== '' && !row.ticked) {
    return { ...state, error: words.tickOrLeave(state.row + 1) };
  }
  return accept(context, state, ticked);
}

/** Enter where no line is marked: what to press instead. */
function unmarked(context: Context, state: State): string {
  if (state.view !== 'ask') return words.moveFirst;
  const ticks = questionAt(context, state.at).kind === 'choices';
  return ticks ? words.tickFirst : words.markFirst;
}

/** A letter typed while a line below the field is highlighted is meant for the field. */
function typesIntoField(rows: readonly Row[], key: Key): boolean {
  return rows[0]?.kind === 'field' && key.name === 'text' && !['?', ' '].includes(key.text);
}

/** `?` opens help: it is part of no number, ZIP code or name. A pasted one stays in the text. */
function helpFor(state: State, key: Key): Partial<State> {
  const asks = key.name === 'text' && key.text === '?' && !key.pasted;
  return asks ? { view: 'help', row: 0, scroll: 0, field: state.field } : {};
}
