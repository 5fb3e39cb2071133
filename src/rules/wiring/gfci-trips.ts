import type { Facts } from '../../home/facts';
import type { Routes, Rule, Trigger } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** A bonded generator with protected outlets trips when it is tied to the house. */
export const gfciTrips: Rule = {
  id: 'gfci-trips',
  applies: ({ facts }, routes) => {
    const inlet = routeWith(
      routes,
      (route) => route.connection === 'inlet',
      'generator-feed-house-inlet',
    );
    return facts.applies('engine-neutral') ? ownGenerator(facts, routes, inlet) : inlet;
  },
};

function ownGenerator(facts: Facts, routes: Routes, inlet: Trigger | null): Trigger | null {
  const bonded = said({
    facts,
    id: 'engine-neutral',
    choices: ['bonded', 'switchable'],
    because: 'neutral-generator-bonded',
    unknown: 'not-known-neutral-generator-set',
  });
  const joined =
    facts.is('engine-connect', 'inlet') || routes.some((route) => route.connection === 'inlet');
  return joined ? both(bonded, inlet ?? bonded) : null;
}
