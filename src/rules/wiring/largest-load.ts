import { feedsCircuits, hasFixedBattery } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** On its own a source must carry at least the largest single thing joined to it. */
export const largestLoad: Rule = {
  id: 'largest-load',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.told('home-kind') && facts.is('home-kind', 'off-grid')
        ? yes('home-makes-all-own')
        : null,
      routeWith(
        routes,
        (route) => hasFixedBattery(route) && feedsCircuits(route),
        'battery-chosen-circuits-plan',
      ),
    ),
};
