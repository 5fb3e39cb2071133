import type { Rule } from '../rule';
import { said } from '../when/said';

/** No way to call for help. */
export const noPhone: Rule = {
  id: 'no-phone',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'phone-works',
      choices: ['neither'],
      because: 'no-phone-works-when',
      unknown: 'not-known-phone-works-when-power',
    }),
};
