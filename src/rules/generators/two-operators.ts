import type { Rule } from '../rule';
import { both } from '../when/both';
import { manualGenerator } from '../when/manual-generator';
import { said } from '../when/said';

/** Only one person can run it, and that person may be away. */
export const twoOperators: Rule = {
  id: 'two-operators',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'operators',
        choices: ['one'],
        because: 'only-one-person-start',
        unknown: 'not-known-start-fuel-generator',
      }),
      manualGenerator(home, routes),
    ),
};
