import { careful, type Rule, yes } from '../rule';

/** There is food in a fridge or a freezer. */
export const foodClock: Rule = {
  id: 'food-clock',
  applies: ({ facts }) => {
    const cold = (facts.number('fridge-count') ?? 0) + (facts.number('freezer-count') ?? 0);
    if (cold > 0) return yes('You keep food in a fridge or freezer.');
    return facts.open('fridge-count') ? careful('We do not know what food you keep cold.') : null;
  },
};
