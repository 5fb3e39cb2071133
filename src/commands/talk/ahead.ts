import type { Answers } from '../../interview/answers';
import type { DraftAll } from './draft-all';

/** What is worked out while a question is read: it is remembered by whoever finds it, and nothing else. */
export interface Ahead {
  /** Another question stands: the answers as they could be after it, likeliest first. */
  begin(likely: readonly Answers[]): void;
  /** What they would be if it were entered as it stands: that goes before all others, with the sums beside it. */
  lean(answers: Answers): void;
  /** One step on; false where nothing is left. */
  step(): boolean;
}

export function aheadBy({
  nextInSteps,
  draftOf,
}: Pick<DraftAll, 'nextInSteps' | 'draftOf'>): Ahead {
  let leaning: Answers | null = null;
  let likely: readonly Answers[] = [];
  let begun: { readonly answers: Answers; readonly steps: Iterator<unknown> } | null = null;
  function* withSums(answers: Answers) {
    draftOf(answers);
    yield;
    yield* nextInSteps(answers);
  }
  const isDone = (steps: Iterator<unknown>): boolean => {
    try {
      return steps.next().done === true;
    } catch {
      // Whoever is asked for it finds that out.
      return true;
    }
  };
  return {
    begin(after) {
      leaning = null;
      likely = after;
    },
    lean(answers) {
      leaning = answers;
    },
    step() {
      const answers = leaning ?? likely[0];
      if (answers === undefined) return false;
      if (begun?.answers !== answers) {
        const steps = answers === leaning ? withSums(answers) : nextInSteps(answers);
        begun = { answers, steps };
      }
      if (isDone(begun.steps)) {
        begun = null;
        if (answers === leaning) leaning = null;
        else likely = likely.slice(1);
      }
      return leaning !== null || likely.length > 0;
    },
  };
}
