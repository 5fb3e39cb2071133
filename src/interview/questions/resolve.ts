import { type Answer, type Answers, NOT_SURE } from '../answers';
import { holds } from './holds';
import type { Question } from './question';

/** How we come to a value: told, assumed after "not sure", or assumed because it was never asked. */
export type How = 'told' | 'unsure' | 'unasked';

export interface Known {
  readonly value: Answer | null;
  readonly how: How;
}

/** What is known of each question that applies. One that does not apply is absent. */
export type Resolved = ReadonlyMap<string, Known>;

/**
 * Walk the questions in order and settle each one that applies.
 * `missing: 'assume'` treats an unanswered question like "not sure" (for a plan);
 * `missing: 'leave'` leaves it out (for the draft while the interview runs).
 */
export function resolve(
  questions: readonly Question[],
  answers: Answers,
  missing: 'assume' | 'leave',
): Resolved {
  const known = new Map<string, Known>();
  for (const question of questions) {
    if (question.when !== undefined && !holds(question.when, known)) continue;
    const answer = answers[question.id];
    if (answer === undefined) {
      if (missing === 'assume') {
        known.set(question.id, { value: question.unsure.assume, how: 'unasked' });
      }
    } else if (answer === NOT_SURE) {
      known.set(question.id, { value: question.unsure.assume, how: 'unsure' });
    } else {
      known.set(question.id, { value: answer, how: 'told' });
    }
  }
  return known;
}
