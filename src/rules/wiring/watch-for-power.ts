import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** With the main off nobody notices that the power is back. */
export const watchForPower: Rule = {
  id: 'watch-for-power',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.told('transfer-existing') && facts.is('transfer-existing', 'interlock', 'manual-switch')
        ? yes('switch-worked-hand')
        : null,
      routeWith(routes, (route) => route.connection === 'inlet', 'route-inlet-plan'),
    ),
};
