import { automaticKinds } from '../../home/route-kind';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';
import { selfStartingPump } from '../when/self-starting-pump';

/** After an automatic transfer every motor that starts by itself tries within seconds. */
export const allStartAtOnce: Rule = {
  id: 'all-start-at-once',
  applies: (home, kinds) =>
    both(
      selfStartingPump(home.facts),
      routeIn(kinds, automaticKinds, 'A source that takes over by itself is in your plan.'),
    ),
};
