import type { Rule } from '../rule';
import { both } from '../when/both';
import { knownGenerator } from '../when/known-generator';
import { said } from '../when/said';

/** Nobody can be sure of more fuel. */
export const fuelRunsOut: Rule = {
  id: 'fuel-runs-out',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'fuel-refill',
        choices: ['no', 'likely'],
        because: 'cannot-sure-more-fuel',
        unknown: 'not-known-get-more-fuel',
      }),
      knownGenerator(home, routes),
    ),
};
