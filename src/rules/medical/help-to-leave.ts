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
      because: 'Someone here cannot get out without help.',
      unknown: 'We do not know whether everyone can get out.',
    }),
};
