import type { Home } from '../../home/home';
import { hasGenerator } from '../../kinds/ask-traits';
import { type Routes, type Trigger, yes } from '../rule';
import { routeWith } from './route-with';

/** A portable or fixed generator is surely here or under discussion; silent when we do not know. */
export function knownGenerator(home: Home, routes: Routes): Trigger | null {
  if (home.facts.has('own-sources', 'engine-portable', 'engine-standby')) {
    return yes('generator');
  }
  return routeWith(routes, hasGenerator, 'route-generator-plan');
}
