import { type Rule, yes } from '../rule';

/** No power, no water. */
export const wellWater: Rule = {
  id: 'well-water',
  applies: ({ facts }) =>
    facts.is('water-source', 'well', 'shallow-pump') ? yes('water-comes-from-pump') : null,
};
