import type { Answers } from '../interview/answers';
import type { Context, State } from '../interview/state';
import type { Unfinished } from '../interview/unfinished';
import type { Draft } from '../plan/draft';

/** What is loaded after the first question stands on the screen. */
export interface Later {
  /** Keep the answers, and what was begun, on disk. A sentence that says what to do when that failed, else null. */
  save(answers: Answers, unfinished: Unfinished): string | null;
  /** What the answers add up to so far. */
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
