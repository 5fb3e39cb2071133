import type { QuestionId } from '#compiled/question-ids.js';
import { careful, type Rule, yes } from '../rule';

/** There is food in a fridge or a freezer. */
export const foodClock: Rule = {
  id: 'food-clock',
  applies: ({ facts }) => {
    const told = (id: QuestionId) => (facts.told(id) ? (facts.number(id) ?? 0) : 0);
    if (told('fridge-count') + told('freezer-count') > 0) {
      return yes('keep-food-fridge-freezer');
    }
    return facts.open('fridge-count') ? careful('not-known-food-keep-cold', 'fridge-count') : null;
  },
};
