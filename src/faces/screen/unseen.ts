import type { Key } from '../../interview/keys/key';
import { isHidden } from '../../interview/questions/is-hidden';
import { questionAt } from '../../interview/questions/relevant';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import type { Hiding } from './hiding';

/** True where a list stands whose lines a shared screen hides. */
export function isHiddenList({ interview }: Pick<Context, 'interview'>, state: State): boolean {
  const listed = questionAt({ interview }, state.at).choices !== undefined;
  return state.view === 'ask' && listed && isHidden(interview, state.at);
}

/** Whether a key would choose or tick a hidden line, which nobody can see: a slip in a device would stay. */
export function choosesUnseen(
  context: Context,
  state: State,
  key: Key,
  hiding: Pick<Hiding, 'open'> | null,
): boolean {
  if (hiding === null || hiding.open || !isHiddenList(context, state)) return false;
  const chooses = key.name === 'enter' || (key.name === 'text' && key.text === ' ');
  return chooses && rowsOf(context, state)[state.row]?.kind === 'choice';
}

/** Keys that move in a list or tick a line. */
const IN_LIST: readonly Key['name'][] = [
  'up',
  'down',
  'page-up',
  'page-down',
  'home',
  'end',
  'text',
];

/**
 * Whether what a shared screen hides stands open behind a key: a list while one chooses in it, all else until the next
 * key. The key that shows hides again, too.
 */
export function openAfter(context: Context, { before, key, after, open }: OpenParts): boolean {
  if (key.name === 'show') return !open;
  const stays = after.view === 'ask' && after.at === before.at && isHiddenList(context, after);
  return open && stays && IN_LIST.includes(key.name);
}

export interface OpenParts {
  readonly before: State;
  readonly key: Key;
  readonly after: State;
  /** Whether it stood open before the key. */
  readonly open: boolean;
}
