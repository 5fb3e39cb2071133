import type { Facts } from '../../home/facts';
import { careful, type Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** One 120 V source on both halves of a panel doubles the current in shared neutrals. */
export const oneLeg120: Rule = {
  id: 'one-leg-120',
  applies: ({ facts }, routes) => {
    const inlet = routeWith(
      routes,
      (route) => route.connection === 'inlet',
      'generator-120-volts-feed',
    );
    const owned = said({
      facts,
      id: 'engine-connect',
      choices: ['inlet', 'wall-outlet'],
      because: 'generator-120-volts-feeds',
      unknown: 'not-known-generator-feeds-panel',
    });
    const volts = said({
      facts,
      id: 'engine-volts',
      choices: ['v120'],
      because: 'generator-gives-120-volts',
      unknown: 'not-known-volts-generator',
    });
    return firstOf(
      both(firstOf(inlet, owned), volts),
      routes.some((route) => route.vehicle) && !gives240(facts)
        ? careful('vehicle-outlets-often-give', asksVolts(facts))
        : null,
    );
  },
};

const gives240 = (facts: Facts) => facts.told('vehicle-volts') && facts.is('vehicle-volts', 'v240');

const asksVolts = (facts: Facts) => (facts.open('vehicle-volts') ? 'vehicle-volts' : undefined);
