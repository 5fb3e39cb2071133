import type { Event } from '../../interview/event';
import type { Key } from '../../interview/keys/key';
import { questionAt } from '../../interview/questions/relevant';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import type { Frame } from './frame';

/** What a key means where a long text stands: it is read to its end before the rows below are reached. */
export function eventFor(state: State, key: Key, shown: Pick<Frame, 'maxScroll' | 'page'>): Event {
  const plain: Event = { type: 'key', key };
  if (!isRead(state)) return plain;
  const page = Math.max(1, shown.page - 1);
  if (key.name === 'page-down') return { type: 'scroll', by: page };
  if (key.name === 'page-up') return { type: 'scroll', by: -page };
  const more = state.scroll < shown.maxScroll;
  if (key.name === 'down' && more) return { type: 'scroll', by: 1 };
  const passesOver = ['help', 'tonight-help', 'welcome'].includes(state.view);
  if (key.name === 'enter' && more && !passesOver) return { type: 'scroll', by: page };
  if (key.name === 'up' && state.row <= 0 && state.scroll > 0) return { type: 'scroll', by: -1 };
  return plain;
}

/**
 * The state in a window of another size: a text that was read to its end, with a line marked below it, stays at its end, so that
 * Enter still chooses that line. Where nothing was marked yet the text stays where it was.
 */
export function afterResize(
  context: Context,
  state: State,
  shown: Pick<Frame, 'maxScroll'>,
): State {
  const here = rowsOf(context, state)[state.row];
  const marked = here !== undefined && !(here.kind === 'act' && here.act === 'read');
  const atEnd = isRead(state) && marked && state.scroll >= shown.maxScroll;
  return atEnd ? { ...state, scroll: Number.MAX_SAFE_INTEGER } : state;
}

/** True where a text stands that may be longer than the window. */
export function isRead({ view }: State): boolean {
  return view !== 'ask' && view !== 'unusual' && view !== 'label' && view !== 'check';
}

/** Keys that end or leave the sitting, and answer nothing: heard whatever stands on the screen. */
export function isAlwaysHeard(key: Key): boolean {
  return ['ctrl-c', 'ctrl-s', 'ctrl-z'].includes(key.name);
}

/** In a window too small for a question, what is typed into its field is taken; no line is chosen unseen. */
export function isForField(context: Context, state: State, key: Key): boolean {
  const { choices } = questionAt(context, state.at);
  const inField = rowsOf(context, state)[state.row]?.kind === 'field';
  const edits = !['escape', 'tab', 'up', 'down', 'page-up', 'page-down'].includes(key.name);
  return state.view === 'ask' && choices === undefined && inField && edits;
}

export const NOT_MEANT =
  'Keys pressed before this stood on the screen were not used. Press them again if you meant them.';
