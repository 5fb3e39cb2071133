import type { Rule } from '../rule';
import { said } from '../when/said';

/** Someone cannot get out alone. */
export const helpToLeave: Rule = {
  id: 'help-to-leave',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'can-leave',
      choices: ['with-help', 'no'],
      because: 'someone-cannot-get-out',
      unknown: 'not-known-everyone-get-out',
    }),
};
