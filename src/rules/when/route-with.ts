import type { RouteTraits } from '../../kinds/route-traits';
import type { Reason } from '../reason';
import { type Routes, type Trigger, yes } from '../rule';

/** Yes when a route with these traits is under discussion. */
export function routeWith(
  routes: Routes,
  has: (route: RouteTraits) => boolean,
  because: Reason,
): Trigger | null {
  return routes.some(has) ? yes(because) : null;
}
