import type { Rule } from '../rule';
import { said } from '../when/said';

/** Gasoline in the house, or in a garage that opens into it. */
export const fuelInWrongPlace: Rule = {
  id: 'fuel-in-wrong-place',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'gasoline-place',
      choices: ['inside', 'attached-garage'],
      because: 'fuel-stands-house-garage',
      unknown: 'not-known-fuel-stands',
    }),
};
