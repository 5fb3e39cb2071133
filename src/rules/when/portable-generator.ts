import type { Home } from '../../home/home';
import { hasPortableGenerator } from '../../kinds/ask-traits';
import type { Routes, Trigger } from '../rule';
import { firstOf } from './first-of';
import { routeWith } from './route-with';
import { said } from './said';

/** A portable generator is here, or a route that brings one is under discussion. Not known: careful. */
export function portableGenerator(home: Home, routes: Routes): Trigger | null {
  return firstOf(
    said({
      facts: home.facts,
      id: 'own-sources',
      choices: ['engine-portable'],
      because: 'portable-generator',
      unknown: 'not-known-generator',
    }),
    routeWith(routes, hasPortableGenerator, 'route-portable-generator-plan'),
  );
}
