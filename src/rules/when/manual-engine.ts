import type { Home } from '../../home/home';
import type { RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';
import { routeIn } from './route-in';

/** An engine that a person must start is here or under discussion. */
export function manualEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  if (home.facts.has('own-sources', 'engine-portable')) {
    return yes('You have an engine that a person must start.');
  }
  return routeIn(
    kinds,
    ['engine-cords', 'engine-inlet'],
    'An engine that a person must start is in your plan.',
  );
}
