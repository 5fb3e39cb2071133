import type { Rule } from '../rule';
import { said } from '../when/said';

/** Dry ice keeps food cold and can suffocate. Not known: careful. */
export const dryIce: Rule = {
  id: 'dry-ice',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'cook-without',
      choices: ['dry-ice-cooler'],
      because: 'keep-food-cold-dry',
      unknown: 'not-known-use-dry-ice',
    }),
};
