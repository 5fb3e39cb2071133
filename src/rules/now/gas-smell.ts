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
      because: 'You told us of a gas smell.',
      unknown: 'We do not know whether there is a gas smell.',
    }),
};
