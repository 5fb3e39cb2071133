import { careful, type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** Transfer by hand has one safe order. */
export const interlockOrder: Rule = {
  id: 'interlock-order',
  applies: (home, routes) => {
    const { facts } = home;
    const byHand =
      facts.told('transfer-existing') &&
      facts.is('transfer-existing', 'interlock', 'manual-switch');
    const generator =
      facts.has('own-sources', 'engine-portable', 'engine-standby') || facts.open('own-sources');
    return firstOf(
      byHand ? yes('You have a switch or interlock worked by hand.') : null,
      facts.is('engine-connect', 'inlet') && facts.told('engine-connect')
        ? yes('The generator feeds the house through an inlet.')
        : null,
      routeWith(
        routes,
        (route) => route.connection === 'inlet',
        'A route with an inlet is in your plan.',
      ),
      generator && facts.open('transfer-existing')
        ? careful(
            'We do not know how a generator would be switched to the house.',
            'transfer-existing',
          )
        : null,
    );
  },
};
