import type { Answers } from '../interview/answers';
import type { Event } from '../interview/event';
import type { Context, State } from '../interview/state';
import type { Unfinished } from '../interview/unfinished';
import type { Draft } from '../plan/draft';

/**
 * How keeping went: null when all is on the disk; a sentence that says what to do when it is not; or all is, and
 * somebody else has changed the home meanwhile.
 */
export type Saved = null | string | OutsideChange;

export interface OutsideChange {
  readonly answers: Answers;
  /** Questions that both sides answered, to be asked again. */
  readonly ask: readonly string[];
  readonly says: string;
}

/** What is loaded after the first question stands on the screen. */
export interface Later {
  /** Keep the answers, and what was begun, on disk. */
  save(answers: Answers, unfinished: Unfinished): Saved;
  /** What the answers add up to so far. It may throw; nothing else may hang on it. */
  weigh(answers: Answers): Draft;
}

/** What `main` hands to a face. The face draws and reads keys; the reducer decides. */
export interface Door {
  readonly context: Context;
  readonly start: State;
  readonly later: Promise<Later>;
  /** False with NO_COLOR, TERM=dumb or --no-color. */
  readonly color: boolean;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
}

/** The interview as the face left it: `state.ending` says how. */
export type Face = (door: Door) => Promise<State>;

/** What the interview is told of how keeping went. */
export function afterSaving(saved: Saved): Event[] {
  const unsaved: Event = { type: 'unsaved', text: typeof saved === 'string' ? saved : null };
  if (saved === null || typeof saved === 'string') return [unsaved];
  const { answers, ask, says } = saved;
  return [unsaved, { type: 'outside', answers, ask, text: says }];
}
