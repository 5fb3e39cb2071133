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
      because: 'No phone works here when the power is out.',
      unknown: 'We do not know whether a phone works here when the power is out.',
    }),
};
