import type { QuestionId } from '#compiled/question-ids.js';
import { careful, type Rule, yes } from '../rule';

/** There is food in a fridge or a freezer. */
export const foodClock: Rule = {
  id: 'food-clock',
  applies: ({ facts }) => {
    const told = (id: QuestionId) => (facts.told(id) ? (facts.number(id) ?? 0) : 0);
    if (told('fridge-count') + told('freezer-count') > 0) {
      return yes('You keep food in a fridge or freezer.');
    }
    return facts.open('fridge-count')
      ? careful('We do not know what food you keep cold.', 'fridge-count')
      : null;
  },
};
