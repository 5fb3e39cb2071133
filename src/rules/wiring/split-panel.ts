import type { Rule } from '../rule';
import { both } from '../when/both';
import { said } from '../when/said';
import { wiredRoute } from '../when/wired-route';

/** No single main breaker: an interlock cannot simply be fitted. */
export const splitPanel: Rule = {
  id: 'split-panel',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'panel-kind',
        choices: ['split-bus', 'fuses', 'no-main'],
        because: 'panel-several-mains-fuses',
        unknown: 'not-known-kind-panel-house',
      }),
      wiredRoute(routes),
    ),
};
