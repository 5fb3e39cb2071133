import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';

/** The number a household told, null when it was not sure or not asked. */
export function toldNumber({ facts }: Home, id: QuestionId): number | null {
  return facts.told(id) ? facts.number(id) : null;
}

/** A price told in cents, in dollars. */
export function toldDollars(home: Home, id: QuestionId): number | null {
  const cents = toldNumber(home, id);
  return cents === null ? null : cents / 100;
}
