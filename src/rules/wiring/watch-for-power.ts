import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** With the main off nobody notices that the power is back. */
export const watchForPower: Rule = {
  id: 'watch-for-power',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.told('transfer-existing') && facts.is('transfer-existing', 'interlock', 'manual-switch')
        ? yes('You have a switch worked by hand.')
        : null,
      routeIn(kinds, ['engine-inlet'], 'A route with an inlet is in your plan.'),
    ),
};
