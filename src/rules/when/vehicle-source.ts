import type { Facts } from '../../home/facts';
import { type Routes, type Trigger, yes } from '../rule';
import { firstOf } from './first-of';
import { routeWith } from './route-with';

/** A vehicle with outlets is here, or one is under discussion as a source. */
export function vehicleSource(facts: Facts, routes: Routes): Trigger | null {
  return firstOf(
    facts.has('own-sources', 'ev-outlet', 'hybrid-outlet') ? yes('vehicle-outlets') : null,
    routeWith(routes, (route) => route.vehicle, 'vehicle-source-plan'),
  );
}
