import { onAct } from '../act';
import { offered, questionAt } from '../questions/relevant';
import { rowsOf } from '../rows';
import type { Context, State } from '../state';
import { words } from '../words';
import type { Key } from './key';
import { rowOfDigits } from './row-of-digits';

/** Letters on a list: Space ticks, digits move, `?` helps; a paste or any other letter does nothing. */
export function onListText(context: Context, state: State, key: Key & { name: 'text' }): State {
  if (key.pasted) return state;
  if (key.text === '?' && (state.view === 'ask' || state.view === 'tonight'))
    return onAct(context, state, 'help');
  if (state.view !== 'ask') return state;
  const question = questionAt(context, state.at);
  if (key.text === ' ') {
    const row = rowsOf(context, state)[state.row];
    if (question.kind !== 'choices') return { ...state, digits: '' };
    if (row === undefined) return { ...state, error: words.tickFirst };
    if (row.kind !== 'choice') return { ...state, digits: '' };
    return { ...state, digits: '', error: null, ticked: tick(context, state, row.id) };
  }
  if (/^[0-9]$/.test(key.text)) return moveToDigit(context, state, key.text);
  return state;
}

/** Digits that name no line, such as a ZIP code typed ahead: the Enter behind them must not choose. */
const STRAY = 'stray';

/** True when digits were typed that name no line. */
export function isStray({ digits }: State): boolean {
  return digits === STRAY;
}

function moveToDigit(context: Context, state: State, digit: string): State {
  if (isStray(state)) return state;
  const question = questionAt(context, state.at);
  const named = rowOfDigits(state.digits, digit, offered(context, state, question).length);
  if (named === null) {
    const error = words.noSuchLine(digit, question.kind === 'choices');
    return { ...state, digits: STRAY, error };
  }
  return { ...state, ...named, error: null };
}

/** Tick or untick a choice; one that stands alone clears the others and is cleared by them. */
function tick(context: Context, state: State, id: string): readonly string[] {
  if (state.ticked.includes(id)) return state.ticked.filter((t) => t !== id);
  const choices = questionAt(context, state.at).choices ?? [];
  const alone = (one: string) => choices.find((c) => c.id === one)?.alone === true;
  if (alone(id)) return [id];
  const together = [...state.ticked.filter((t) => !alone(t)), id];
  return choices.map((c) => c.id).filter((c) => together.includes(c));
}
