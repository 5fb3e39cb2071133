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
      because: 'You have a standby generator.',
      unknown: 'We do not know whether you have a standby generator.',
    }),
    routeWith(routes, hasFixedGenerator, 'A route with a fixed generator is in your plan.'),
  );
}
