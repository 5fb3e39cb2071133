import type { Home } from '../../home/home';
import type { RouteKind } from '../../home/route-kind';
import type { Trigger } from '../rule';
import { firstOf } from './first-of';
import { routeIn } from './route-in';
import { said } from './said';

/** A portable engine is here, or a route that brings one is under discussion. Not known: careful. */
export function portableEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  return firstOf(
    said({
      facts: home.facts,
      id: 'own-sources',
      choices: ['engine-portable'],
      because: 'You have a portable engine.',
      unknown: 'We do not know whether you have an engine.',
    }),
    routeIn(
      kinds,
      ['engine-cords', 'engine-inlet', 'battery-engine'],
      'A route with a portable engine is in your plan.',
    ),
  );
}
