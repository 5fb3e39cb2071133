import type { Facts } from '../../home/facts';
import type { RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';
import { firstOf } from './first-of';
import { routeIn } from './route-in';

/** A vehicle with outlets is here, or one is under discussion as a source. */
export function vehicleSource(facts: Facts, kinds: ReadonlySet<RouteKind>): Trigger | null {
  return firstOf(
    facts.has('own-sources', 'ev-outlet', 'hybrid-outlet')
      ? yes('You have a vehicle with outlets.')
      : null,
    routeIn(kinds, ['vehicle'], 'A vehicle as a source is in your plan.'),
  );
}
