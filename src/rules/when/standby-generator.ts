import type { Home } from '../../home/home';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import type { Routes, Trigger } from '../rule';
import { firstOf } from './first-of';
import { routeWith } from './route-with';
import { said } from './said';

/** A generator fixed outdoors is here or under discussion. Not known: careful. */
export function standbyGenerator(home: Home, routes: Routes): Trigger | null {
  return firstOf(
    said({
      facts: home.facts,
      id: 'own-sources',
      choices: ['engine-standby'],
      because: 'standby-generator',
      unknown: 'not-known-standby-generator',
    }),
    routeWith(routes, hasFixedGenerator, 'route-fixed-generator-plan'),
  );
}
