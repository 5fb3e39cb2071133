import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { Facts } from '../../home/facts';
import type { Reason } from '../reason';
import { careful, type Trigger, yes } from '../rule';

export interface Said<Q extends QuestionId> {
  readonly facts: Facts;
  /** The question. */
  readonly id: Q;
  /** The choices that give cause to speak. */
  readonly choices: readonly ChoiceId<Q>[];
  /** Why, when the household chose one of them. */
  readonly because: Reason;
  /** Why, when we do not know. */
  readonly unknown: Reason;
}

/**
 * Told, and one of these choices: yes. Not known, and either assumed to be one of these or not to
 * be assumed at all: careful. Anything else, or a question that does not apply: null.
 */
export function said<Q extends QuestionId>({
  facts,
  id,
  choices,
  because,
  unknown,
}: Said<Q>): Trigger | null {
  if (!facts.applies(id)) return null;
  const hit = facts.is(id, ...choices) || facts.has(id, ...choices);
  if (facts.told(id)) return hit ? yes(because) : null;
  return hit || facts.value(id) === null ? careful(unknown, id) : null;
}
