import type { Rule } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';
import { selfStartingPump } from '../when/self-starting-pump';

/** After an automatic transfer every motor that starts by itself tries within seconds. */
export const allStartAtOnce: Rule = {
  id: 'all-start-at-once',
  applies: (home, routes) =>
    both(
      selfStartingPump(home.facts),
      routeWith(routes, (route) => route.automatic, 'source-takes-over-itself'),
    ),
};
