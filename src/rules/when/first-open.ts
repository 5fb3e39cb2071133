import type { QuestionId } from '#compiled/question-ids.js';
import type { Facts } from '../../home/facts';

/** The first of these questions that applies and is not answered; undefined when all are. */
export function firstOpen(facts: Facts, ...ids: readonly QuestionId[]): QuestionId | undefined {
  return ids.find((id) => facts.open(id));
}
