import { careful, type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** Transfer by hand has one safe order. In an apartment no generator may run at all, and none is told how to start one. */
export const interlockOrder: Rule = {
  id: 'interlock-order',
  applies: (home, routes) => {
    const { facts } = home;
    if (facts.told('home-kind') && facts.is('home-kind', 'apartment')) return null;
    const byHand =
      facts.told('transfer-existing') &&
      facts.is('transfer-existing', 'interlock', 'manual-switch');
    const generator =
      facts.has('own-sources', 'engine-portable', 'engine-standby') || facts.open('own-sources');
    return firstOf(
      byHand ? yes('switch-interlock-worked-hand') : null,
      facts.is('engine-connect', 'inlet') && facts.told('engine-connect')
        ? yes('generator-feeds-house-through')
        : null,
      routeWith(routes, (route) => route.connection === 'inlet', 'route-inlet-plan'),
      generator && facts.open('transfer-existing')
        ? careful('not-known-generator-switched-house', 'transfer-existing')
        : null,
    );
  },
};
