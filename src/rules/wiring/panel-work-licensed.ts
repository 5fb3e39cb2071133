import type { Rule } from '../rule';
import { both } from '../when/both';
import { said } from '../when/said';
import { wiredRoute } from '../when/wired-route';

/** Nobody but a licensed electrician opens the panel. */
export const panelWorkLicensed: Rule = {
  id: 'panel-work-licensed',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'who-works',
        choices: ['self', 'friend'],
        because: 'named-yourself-friend-work',
        unknown: 'not-known-work',
      }),
      wiredRoute(routes),
    ),
};
