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
      because: 'You would keep food cold with dry ice.',
      unknown: 'We do not know whether you would use dry ice.',
    }),
};
