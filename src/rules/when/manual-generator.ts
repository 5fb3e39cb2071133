import type { Home } from '../../home/home';
import { type Routes, type Trigger, yes } from '../rule';
import { routeWith } from './route-with';

/** A generator that a person must start is here or under discussion. */
export function manualGenerator(home: Home, routes: Routes): Trigger | null {
  if (home.facts.has('own-sources', 'engine-portable')) {
    return yes('generator-person-must-start');
  }
  return routeWith(routes, (route) => route.byHand, 'generator-person-must-start-plan');
}
