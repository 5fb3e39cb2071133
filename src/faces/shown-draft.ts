import type { Draft } from '../plan/draft/draft';

/** The draft as a face is handed it. */
export interface ShownDraft extends Draft {
  /** Sentences to show below: what would have to be true for more, and answers that do not fit together. */
  readonly lines: readonly string[];
}
