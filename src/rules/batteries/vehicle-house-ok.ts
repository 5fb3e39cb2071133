import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** A vehicle that feeds a house needs the proper switch and the maker's word. */
export const vehicleHouseOk: Rule = {
  id: 'vehicle-house-ok',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'ev-outlet', 'hybrid-outlet')
        ? yes('You have a vehicle with outlets.')
        : null,
      routeIn(kinds, ['vehicle'], 'A vehicle as a source is in your plan.'),
    ),
};
