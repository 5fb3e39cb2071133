import type { Key } from '../../interview/keys/key';
import { questionAt } from '../../interview/questions/relevant';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';

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
