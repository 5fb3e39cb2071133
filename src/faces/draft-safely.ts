import type { Answers } from '../interview/answers';
import type { NextStep } from '../interview/next-step';
import type { Later } from './door';
import type { ShownDraft } from './shown-draft';

/** The sums beside the question are at fault: the sitting goes on without them. */
export const SUMS_FAILED = 'sums failed';

/** What the answers add up to, or that there are no sums just now. */
export function draftSafely(later: Later, answers: Answers): ShownDraft | typeof SUMS_FAILED {
  try {
    return later.draftOf(answers);
  } catch {
    return SUMS_FAILED;
  }
}

/** What comes next, or null where that cannot be worked out. */
export function nextSafely(later: Later, answers: Answers): NextStep | null {
  try {
    return later.next?.(answers) ?? null;
  } catch {
    return null;
  }
}
