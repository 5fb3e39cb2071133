import { hasGenerator, isWired } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { fixedBattery } from '../when/fixed-battery';
import { floods } from '../when/floods';
import { routeWith } from '../when/route-with';

/** Fixed equipment goes above the highest water. */
export const aboveFlood: Rule = {
  id: 'above-flood',
  applies: (home, routes) =>
    both(
      floods(home.facts),
      firstOf(
        fixedBattery(home, routes),
        routeWith(routes, (route) => hasGenerator(route) && isWired(route), 'fixed-equipment-plan'),
      ),
    ),
};
