import type { Rule } from '../rule';
import { said } from '../when/said';

/** Gas smell: leave, touch nothing, and mind a generator that starts by itself. */
export const gasSmell: Rule = {
  id: 'gas-smell',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'now-danger',
      choices: ['gas-smell'],
      because: 'told-gas-smell',
      unknown: 'not-known-there-gas-smell',
    }),
};
