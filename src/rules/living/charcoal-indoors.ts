import type { Rule } from '../rule';
import { said } from '../when/said';

/** Charcoal, a grill or a camp stove is how they would cook. Not known: careful. */
export const charcoalIndoors: Rule = {
  id: 'charcoal-indoors',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'cook-without',
      choices: ['charcoal-indoors', 'camp-stove', 'outdoor-grill'],
      because: 'You would cook on charcoal, a grill or a camp stove.',
      unknown: 'We do not know how you would cook with no power.',
    }),
};
