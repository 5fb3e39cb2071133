import type { Rule } from '../rule';
import { said } from '../when/said';

/** Charcoal or a camp stove indoors. Not known: careful. */
export const charcoalIndoors: Rule = {
  id: 'charcoal-indoors',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'cook-without',
      choices: ['charcoal-indoors'],
      because: 'cook-charcoal-camp-stove',
      unknown: 'not-known-cook-no-power',
    }),
};
