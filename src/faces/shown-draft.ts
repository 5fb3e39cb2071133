import type { Draft } from '../plan/draft/draft';

/** The draft as a face is handed it. */
export interface ShownDraft extends Draft {
  /** Sentences to show below: answers that do not fit together. */
  readonly lines: readonly string[];
}
