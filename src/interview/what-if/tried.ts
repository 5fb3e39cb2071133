import type { Answers } from '../answers';

/** A step of size beside the one advised; 0: as advised. */
export type SizeStep = -1 | 0 | 1;

/** Answers as they would be, and the size tried, which is no answer. Nothing of it is written. */
export interface Tried {
  readonly answers: Answers;
  readonly size: SizeStep;
}

/** One thing that is tried: what it is called, how it is now, and how it would be. */
export interface TriedThing {
  /** Questions that keeping it asks; none for a size, which the plan chooses. */
  readonly asks: readonly string[];
  readonly says: string;
  readonly now: string;
  readonly then: string;
  /** More or less than most homes have. */
  readonly unusual?: boolean;
}
