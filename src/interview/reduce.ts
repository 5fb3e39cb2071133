import { formatQuantity } from '../quantity/format-quantity';
import { type Answer, choicesIn, NOT_SURE } from './answers';
import { show } from './begin';
import { checkTyped } from './check-answer';
import type { Key } from './key';
import { offered, questionAt, relevant } from './relevant';
import { type Act, type Row, rowsOf } from './rows';
import type { Context, State } from './state';
import { eraseLeft, fieldOf, insertText, moveCursor } from './text-field';
import { words } from './words';

/** What can happen to the interview: a key, an answer given outright (the line face), or a word from outside. */
export type Event =
  | { readonly type: 'key'; readonly key: Key }
  | { readonly type: 'answer'; readonly answer: Answer }
  | { readonly type: 'typed'; readonly text: string }
  | { readonly type: 'act'; readonly act: Act }
  /** Open a question from the list of answers. */
  | { readonly type: 'open'; readonly question: string }
  /** Move a long text by so many lines. The face knows how many fit. */
  | { readonly type: 'scroll'; readonly by: number }
  | { readonly type: 'notice'; readonly text: string | null };

/** The interview after an event. Pure; an ended interview stays as it is. */
export function reduce(context: Context, state: State, event: Event): State {
  if (state.ending !== null) return state;
  switch (event.type) {
    case 'key':
      return onKey(context, state, event.key);
    case 'answer':
      return accept(context, state, event.answer);
    case 'typed':
      return submitTyped(context, { ...state, field: fieldOf(event.text) });
    case 'act':
      return onAct(context, state, event.act);
    case 'open':
      return open(context, state, event.question);
    case 'scroll':
      return { ...state, scroll: Math.max(0, state.scroll + event.by) };
    case 'notice':
      return { ...state, notice: event.text };
  }
}

function onKey(context: Context, state: State, key: Key): State {
  const rows = rowsOf(context, state);
  const here = rows[state.row];
  if (key.name === 'enter' && state.digits === STRAY) return { ...state, digits: '' };
  const still: State = key.name === 'text' ? state : { ...state, digits: '' };
  switch (key.name) {
    case 'ctrl-c':
      return { ...state, ending: 'interrupted' };
    case 'ctrl-s':
      return onAct(context, still, 'stop');
    case 'escape':
      return state.view === 'check' ? leaveCheck(context, state) : onAct(context, still, 'back');
    case 'tab':
      return state.view === 'ask' ? onAct(context, still, 'not-sure') : still;
    case 'up':
    case 'down':
    case 'page-up':
    case 'page-down':
      return moveRow(still, rows.length, key.name);
    case 'enter':
      return onEnter(context, still);
    default:
      break;
  }
  if (here?.kind !== 'field' && !typesIntoField(rows, key)) {
    return key.name === 'text' ? onListText(context, state, key) : still;
  }
  return {
    ...still,
    row: 0,
    error: null,
    notice: null,
    field: editField(state, key),
    ...helpFor(state, key),
  };
}

/** A letter typed while a line below the field is highlighted is meant for the field. */
function typesIntoField(rows: readonly Row[], key: Key): boolean {
  return rows[0]?.kind === 'field' && key.name === 'text' && !['?', ' '].includes(key.text);
}

/** `?` in an empty field opens help; elsewhere it is a letter. */
function helpFor(state: State, key: Key): Partial<State> {
  const asks = key.name === 'text' && key.text === '?' && state.field.text === '' && !key.pasted;
  return asks ? { view: 'help', row: 0, scroll: 0, field: state.field } : {};
}

function editField(state: State, key: Key): State['field'] {
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
    case 'ctrl-u':
      return fieldOf('');
    default:
      return state.field;
  }
}

function moveRow(
  state: State,
  count: number,
  name: 'up' | 'down' | 'page-up' | 'page-down',
): State {
  const by = { up: -1, down: 1, 'page-up': -8, 'page-down': 8 }[name];
  // Among many answers going on past the end is handy; below a warning it could mislead.
  const far = Math.abs(by) > 1 || state.view === 'act-now';
  const next = state.row + by;
  const row = far ? Math.min(count - 1, Math.max(0, next)) : (next + count) % count;
  return { ...state, row };
}

/** Letters on a list: Space ticks, digits move, `?` helps; a paste or any other letter does nothing. */
function onListText(context: Context, state: State, key: Key & { name: 'text' }): State {
  if (key.pasted) return state;
  if (key.text === '?' && state.view === 'ask') return onAct(context, state, 'help');
  if (state.view !== 'ask') return state;
  const question = questionAt(context, state.at);
  if (key.text === ' ') {
    const row = rowsOf(context, state)[state.row];
    if (row?.kind !== 'choice' || question.kind !== 'choices') return { ...state, digits: '' };
    return { ...state, digits: '', error: null, ticked: tick(context, state, row.id) };
  }
  if (/^[0-9]$/.test(key.text)) return moveToDigit(context, state, key.text);
  return state;
}

/** Digits that name no line, such as a ZIP code typed ahead: the Enter behind them must not choose. */
const STRAY = 'stray';

function moveToDigit(context: Context, state: State, digit: string): State {
  if (state.digits === STRAY) return state;
  const count = offered(context, state, questionAt(context, state.at)).length;
  const both = Number(state.digits + digit);
  const number = both <= count ? both : Number(digit);
  if (number < 1 || number > count) {
    return { ...state, digits: STRAY, error: words.noSuchLine(digit) };
  }
  return { ...state, row: number - 1, digits: String(number) };
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

function onEnter(context: Context, before: State): State {
  const state = { ...before, notice: null };
  const row = rowsOf(context, state)[state.row];
  if (row === undefined) return state;
  if (row.kind === 'field') return submitTyped(context, state);
  if (row.kind === 'act') return onAct(context, state, row.act);
  if (row.kind === 'answer') return open(context, state, row.id);
  const question = questionAt(context, state.at);
  if (question.kind === 'choice') return accept(context, state, row.id);
  const shown = offered(context, state, question).map((c) => c.id);
  const ticked = state.ticked.filter((id) => shown.includes(id));
  if (ticked.length > 0) return accept(context, state, ticked);
  return { ...state, error: words.tickFirst };
}

/** A question opened from the list: answering it leads back there. */
function open(context: Context, state: State, id: string): State {
  return { ...show(context, { ...state, trail: [], ahead: [] }, id), fromCheck: true };
}

function submitTyped(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  const read = checkTyped(question, state.field.text);
  if (!read.ok) return { ...state, error: read.message, row: 0 };
  if (question.kind === 'name') {
    const taken = context.nameProblem(String(read.value));
    if (taken !== null) return { ...state, error: taken };
  }
  if (read.unusual && typeof read.value === 'number') {
    const said = formatQuantity(read.value, question.unit ?? 'count');
    const unusual = { value: read.value, said };
    return { ...state, view: 'unusual', row: 0, error: null, unusual };
  }
  const notice = read.note === undefined ? null : words.understood(read.note);
  return accept(context, { ...state, notice }, read.value);
}

function onAct(context: Context, state: State, act: Act): State {
  switch (act) {
    case 'not-sure':
      return notSure(context, state);
    case 'help':
      return { ...state, view: 'help', row: 0, scroll: 0, digits: '' };
    case 'back':
      return back(context, state);
    case 'stop':
      return { ...state, ending: 'saved' };
    case 'draft':
      return { ...state, view: 'check', row: 0, error: null };
    case 'yes':
      return accept(context, state, state.unusual?.value ?? NOT_SURE);
    case 'again':
      return { ...state, view: 'ask', row: 0, unusual: null };
    case 'go-on':
      return goOn(context, { ...state, view: 'ask' });
    case 'stop-now':
      return { ...state, ending: 'danger' };
    case 'write':
      return { ...state, ending: 'plan' };
  }
}

function notSure(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  if (question.kind === 'name') return accept(context, state, context.spareName());
  return accept(context, state, NOT_SURE);
}

/** Keep an answer. Danger shows what to do now; anything else goes on. */
function accept(context: Context, state: State, answer: Answer): State {
  const question = questionAt(context, state.at);
  const kept: State = { ...state, answers: { ...state.answers, [state.at]: answer }, error: null };
  const ids: readonly Answer[] = choicesIn(answer) ?? [answer];
  const urgent = question.choices?.some((c) => c.actNow !== undefined && ids.includes(c.id));
  const hasWarnings = question.choices?.some((c) => c.stopFirst === true);
  if (urgent || (hasWarnings && answer === NOT_SURE)) {
    const ticked = answer === NOT_SURE ? [] : ids.map(String);
    return { ...kept, view: 'act-now', ticked, row: 0 };
  }
  return goOn(context, kept);
}

/** The next question: the first new one, or the one we came back from, whichever is asked first. */
function goOn(context: Context, state: State): State {
  const order = relevant(context, state.answers).map((q) => q.id);
  const fresh = order.filter((id) => state.answers[id] === undefined);
  if (state.fromCheck) {
    const opened = fresh[0];
    if (opened === undefined) return toCheck(state);
    return { ...show(context, state, opened), fromCheck: true };
  }
  const here = order.indexOf(state.at);
  const ahead = state.ahead.filter((id) => order.indexOf(id) > here);
  const nearest = ahead.at(-1);
  const next = [fresh.find((id) => order.indexOf(id) > here) ?? fresh[0], nearest]
    .filter((id) => id !== undefined)
    .sort((a, b) => order.indexOf(a) - order.indexOf(b))[0];
  if (next === undefined) return toCheck(state);
  const trail = [...state.trail, state.at];
  const rest = next === nearest ? ahead.slice(0, -1) : ahead;
  return show(context, { ...state, trail, ahead: rest }, next);
}

function toCheck(state: State): State {
  return { ...state, view: 'check', row: 0, fromCheck: false, error: null, unusual: null };
}

function back(context: Context, state: State): State {
  if (state.view === 'help' || state.view === 'unusual') {
    return { ...state, view: 'ask', row: 0, unusual: null };
  }
  if (state.view === 'act-now') return show(context, state, state.at);
  if (state.fromCheck) return toCheck(state);
  const trail = state.trail.filter((id) =>
    relevant(context, state.answers).some((q) => q.id === id),
  );
  const before = trail.at(-1);
  if (before === undefined) return { ...state, error: words.firstQuestion };
  const ahead = [...state.ahead, state.at];
  return show(context, { ...state, notice: null, trail: trail.slice(0, -1), ahead }, before);
}

/** Esc on the list of answers returns to the question left last. */
function leaveCheck(context: Context, state: State): State {
  return show(context, state, state.at);
}
