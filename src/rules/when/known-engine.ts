import type { Home } from '../../home/home';
import { engineKinds, type RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';
import { routeIn } from './route-in';

/** A portable or fixed engine is surely here or under discussion; silent when we do not know. */
export function knownEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  if (home.facts.has('own-sources', 'engine-portable', 'engine-standby')) {
    return yes('You have an engine.');
  }
  return routeIn(kinds, engineKinds, 'A route with an engine is in your plan.');
}
