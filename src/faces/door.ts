import type { Answers } from '../interview/answers';
import type { Event } from '../interview/event';
import type { NextStep } from '../interview/next-step';
import type { Context, State } from '../interview/state';
import type { Unfinished } from '../interview/unfinished';
import type { Tried } from '../interview/what-if/tried';
import type { SaidChanges } from '../plan/changes/said-changes';
import type { SUMS_FAILED } from './draft-safely';
import type { ShownDraft } from './shown-draft';

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

/** Found for the answers asked about: the sums, then what comes next where that was wanted. */
export interface Found {
  readonly draft?: ShownDraft | typeof SUMS_FAILED;
  readonly next?: NextStep | null;
}

/** Weighing and looking for the next question apart from the keys. */
export interface Apart {
  /** Only the newest answers count; `found` may be called twice. */
  look(answers: Answers, wantsNext: boolean, found: (found: Found) => void): void;
  /** What the answers would be if the question on the screen were entered as it stands: nothing is told of it, it is only sooner found. */
  lean(answers: Answers): void;
  close(): void;
}

/** What is loaded after the first question stands on the screen. */
export interface Later {
  /** Keep the answers, and what was begun, on disk. */
  save(answers: Answers, unfinished: Unfinished): Saved;
  /** What the answers add up to so far. It may throw; nothing else may hang on it. */
  draftOf(answers: Answers): ShownDraft;
  /** What comes after the opening. It may throw; then questions come in their written order. */
  next?(answers: Answers): NextStep;
  /** The same two in a thread of its own, so that keys never wait for them. */
  readonly apart?: Apart;
  /** A plan beside another of the same home, for an answer changed after a plan. */
  readonly whatIf?: WhatIfApart;
}

/** A screen that others see. */
export interface Shared {
  /** Names to hide wherever they stand, besides that of the home itself. */
  readonly names: readonly string[];
}

/** What `main` hands to a face. The face draws and reads keys; the reducer decides. */
export interface Door {
  readonly context: Context;
  readonly start: State;
  readonly later: Promise<Later>;
  /** False with NO_COLOR, TERM=dumb or --no-color. */
  readonly color: boolean;
  /** Names of homes to hide on a screen that others see; without it nothing is hidden. */
  readonly shared?: Shared;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  /** The line face came to the end of its input, and nobody had said to stop. */
  onInputEnd?(): void;
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

/** What if, worked out apart from the keys: only the newest of what is asked for is found. */
export interface WhatIfApart {
  look(
    answers: Answers,
    tried: Tried,
    found: (said: SaidChanges | 'no-size' | 'failed') => void,
  ): void;
  close(): void;
}
