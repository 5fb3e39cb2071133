import type { Rule } from '../rule';
import { said } from '../when/said';

/** A sump pump with no battery of its own. */
export const sumpOwnBattery: Rule = {
  id: 'sump-own-battery',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'sump',
      choices: ['one'],
      because: 'sump-pump-no-battery',
      unknown: 'not-known-sump-pump-battery',
    }),
};
