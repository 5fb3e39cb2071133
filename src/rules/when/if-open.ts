import type { QuestionId } from '#compiled/question-ids.js';
import type { Facts } from '../../home/facts';
import type { Reason } from '../reason';
import { careful, type Trigger } from '../rule';

/** Careful when the question applies to this home and its answer is not known. */
export function ifOpen(facts: Facts, id: QuestionId, because: Reason): Trigger | null {
  return facts.open(id) ? careful(because, id) : null;
}
