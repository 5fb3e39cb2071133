import type { Answer, Answers } from './answers';
import type { Key } from './keys/key';
import type { NextStep } from './next-step';
import type { Act } from './rows';

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
  /** What comes next; null where it cannot be worked out. */
  | { readonly type: 'next'; readonly next: NextStep | null }
  | { readonly type: 'notice'; readonly text: string | null }
  /** Why the answers are not on the disk just now; null once they are. */
  | { readonly type: 'unsaved'; readonly text: string | null }
  /** Somebody else changed the home: its answers now, and the questions to ask afresh because both sides answered. */
  | {
      readonly type: 'outside';
      readonly answers: Answers;
      readonly ask: readonly string[];
      readonly text: string;
    };
