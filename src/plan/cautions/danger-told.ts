import type { Answers } from '../../interview/answers';
import { dangerSteps, dangersOf } from '../../interview/dangers';
import type { Interview } from '../../interview/questions/question';
import { questionAt } from '../../interview/questions/relevant';
import { sayAnswer } from '../../interview/say-answer';

/** A danger told while the plan was made: it comes before all that is planned. */
export interface DangerTold {
  /** Every danger told, the deadliest first, by the id and the words of its choice. */
  readonly told: readonly { readonly id: string; readonly says: string }[];
  /** What to do, one instruction each. */
  readonly steps: readonly string[];
}

/** The dangers told in these answers; null when none is. */
export function dangerToldIn(interview: Interview, answers: Answers): DangerTold | null {
  const { dangers } = interview;
  const question = questionAt({ interview }, dangers.question);
  const ids = dangersOf(dangers, answers[dangers.question]).map((one) => one.id);
  if (ids.length === 0) return null;
  return {
    told: ids.map((id) => ({ id, says: sayAnswer(question, id) })),
    steps: dangerSteps(dangers, ids).map((step) => step.say),
  };
}
