import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** A vehicle is also how you leave. */
export const vehicleChargeLeft: Rule = {
  id: 'vehicle-charge-left',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'ev-outlet', 'hybrid-outlet')
        ? yes('You have a vehicle with outlets.')
        : null,
      routeIn(kinds, ['vehicle'], 'A vehicle as a source is in your plan.'),
    ),
};
