import { type RouteKind, wiredKinds } from '../../home/route-kind';
import type { Trigger } from '../rule';
import { routeIn } from './route-in';

/** A route wired to the house is under discussion. */
export function wiredRoute(kinds: ReadonlySet<RouteKind>): Trigger | null {
  return routeIn(kinds, wiredKinds, 'A route wired to your house is in your plan.');
}
