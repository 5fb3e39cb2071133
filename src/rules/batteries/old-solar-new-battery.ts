import { hasFixedBattery } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';

/** A new battery beside solar that is there already. */
export const oldSolarNewBattery: Rule = {
  id: 'old-solar-new-battery',
  applies: ({ facts }, routes) =>
    both(
      facts.has('own-sources', 'solar') ? yes('solar-add-battery') : null,
      routeWith(routes, hasFixedBattery, 'home-battery-plan'),
    ),
};
