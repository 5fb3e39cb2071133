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
        because: 'told-generator-feeds-wall-outlet',
        unknown: 'not-known-generator-connected',
      }),
      facts.told('own-sources')
        ? said({
            facts,
            id: 'own-sources',
            choices: ['backfeed-cord'],
            because: 'told-cord-plug-both-ends',
            unknown: 'not-known-generator-connected',
          })
        : null,
    ),
};
