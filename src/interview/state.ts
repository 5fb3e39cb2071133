import type { Answers } from './answers';
import type { TextField } from './keys/text-field';
import type { NextStep } from './next-step';
import type { Interview } from './questions/question';
import type { Unfinished } from './unfinished';

/** What the interview needs to know of the world, handed in by `main`. */
export interface Context {
  readonly interview: Interview;
  /** End with the opening. */
  readonly short: boolean;
  /** After the opening the face is asked what comes next; without it, questions come in their written order. */
  readonly guided?: boolean;
  /** After the question about danger comes the list of answers, not the next open question. */
  readonly listFirst?: boolean;
  /** Ids of answers taken over from another home: alone they are nothing to keep. */
  readonly takenOver?: readonly string[];
  /** A sentence when a home of this name may not be written, else null. */
  nameProblem(name: string): string | null;
  /** A name that is free, for someone who does not want to choose. */
  spareName(): string;
}

export type View =
  | 'welcome'
  | 'ask'
  | 'unusual'
  | 'label'
  | 'help'
  | 'act-now'
  | 'tonight'
  | 'tonight-help'
  | 'first-plan'
  | 'wait'
  | 'enough'
  | 'check'
  | 'read-back'
  | 'compare'
  | 'walk';

/** How the interview ended: saved on request, interrupted, ready to plan, or stopped for a danger. */
export type Ending = 'saved' | 'interrupted' | 'plan' | 'danger';

export interface State {
  readonly answers: Answers;
  /** What was typed or ticked and not entered, by question. */
  readonly unfinished: Unfinished;
  /** Id of the question on screen, or last on screen. */
  readonly at: string;
  readonly view: View;
  /** Questions shown before this one, oldest first: the way back. */
  readonly trail: readonly string[];
  /** Questions left behind by going back, nearest last: the way forward again. */
  readonly ahead: readonly string[];
  /** What comes next as it was found last; null before the opening has ended. */
  readonly next: NextStep | null;
  /** What was looked at and is still to be entered, in the order of the walk; null outside of it. */
  readonly walking: readonly string[] | null;
  /** Questions put once more before the end, because without them nothing can be advised. */
  readonly askedAgain: readonly string[];
  /** Nothing open would change what to buy, and the rest is asked all the same. */
  readonly asksRest: boolean;
  /** An answer is changed after a plan: the answers of that plan, and what is still to be answered again; null else. */
  readonly changing: {
    readonly before: Answers;
    readonly queue: readonly string[];
    /** What was tried of a question, to be said where it is asked. */
    readonly tried: Readonly<Record<string, string>>;
  } | null;
  /** The question was opened from the list of answers, to change its answer. */
  readonly fromCheck: boolean;
  /** What was unanswered when a question was opened from the list. */
  readonly leftOpen: readonly string[];
  readonly field: TextField;
  /** Highlighted row, or NO_ROW. */
  readonly row: number;
  /** Ticked choices of a question with several answers. */
  readonly ticked: readonly string[];
  /** Digits typed so far on a list, to reach row 12. */
  readonly digits: string;
  /** A sentence that says what to do about the last answer. */
  readonly error: string | null;
  /** What was understood of the last number, or a message from outside. */
  readonly notice: string | null;
  /** Why the answers are not on the disk just now. Stands until they are. */
  readonly unsaved: string | null;
  /** What a whole line of a label was read as, to be confirmed before it counts. */
  readonly label: Answers | null;
  /** The number asked back, with its words. */
  readonly unusual: { readonly value: number; readonly said: string } | null;
  /** First line of help shown, when help is longer than the window. */
  readonly scroll: number;
  readonly ending: Ending | null;
}
