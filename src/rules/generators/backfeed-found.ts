import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';

/** The household has the two-ended cord, or feeds the house through an outlet: stop today. */
export const backfeedFound: Rule = {
  id: 'backfeed-found',
  applies: ({ facts }) =>
    firstOf(
      said({
        facts,
        id: 'engine-connect',
        choices: ['wall-outlet'],
        because: 'You told us the generator feeds a wall outlet.',
        unknown: 'We do not know how the generator is connected.',
      }),
      facts.told('own-sources')
        ? said({
            facts,
            id: 'own-sources',
            choices: ['backfeed-cord'],
            because: 'You told us of a cord with a plug on both ends.',
            unknown: '',
          })
        : null,
    ),
};
