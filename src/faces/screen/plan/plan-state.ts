import { fieldOf, type TextField } from '../../../interview/keys/text-field';
import { BEGINNING, type Passage } from './passage';

/** What stands on the screen of a plan: its text, the list of its sections, a text to find, all keys, or a question. */
export type PlanView = 'read' | 'sections' | 'find' | 'found' | 'keys' | 'leaving' | 'homes';

/** Where the reader is in a plan. */
export interface PlanState {
  readonly view: PlanView;
  /** What stands at the top of the window. */
  readonly passage: Passage;
  /** Line marked in the list of sections; the first is the front page. */
  readonly row: number;
  /** Digits typed so far in that list. */
  readonly digits: string;
  /** What is typed to be found. */
  readonly field: TextField;
  /** What was sought last, and which place of it stands there. */
  readonly sought: string;
  readonly hit: number;
  /** What is to be said about the last key. */
  readonly says: string | null;
}

export const PLAN_START: PlanState = {
  view: 'read',
  passage: BEGINNING,
  row: 0,
  digits: '',
  field: fieldOf(''),
  sought: '',
  hit: 0,
  says: null,
};
