import type { Home } from '../../home/home';
import type { RouteKind } from '../../home/route-kind';
import type { Trigger } from '../rule';
import { firstOf } from './first-of';
import { routeIn } from './route-in';
import { said } from './said';

/** An engine fixed outdoors is here or under discussion. Not known: careful. */
export function standbyEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  return firstOf(
    said({
      facts: home.facts,
      id: 'own-sources',
      choices: ['engine-standby'],
      because: 'You have a standby engine.',
      unknown: 'We do not know whether you have a standby engine.',
    }),
    routeIn(kinds, ['standby-engine'], 'A route with a fixed engine is in your plan.'),
  );
}
