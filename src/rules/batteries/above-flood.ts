import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { fixedBattery } from '../when/fixed-battery';
import { floods } from '../when/floods';
import { routeIn } from '../when/route-in';

/** Fixed equipment goes above the highest water. */
export const aboveFlood: Rule = {
  id: 'above-flood',
  applies: (home, kinds) =>
    both(
      floods(home.facts),
      firstOf(
        fixedBattery(home, kinds),
        routeIn(kinds, ['standby-engine', 'engine-inlet'], 'Fixed equipment is in your plan.'),
      ),
    ),
};
