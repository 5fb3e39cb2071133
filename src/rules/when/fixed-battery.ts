import type { Home } from '../../home/home';
import { hasFixedBattery } from '../../kinds/ask-traits';
import { type Routes, type Trigger, yes } from '../rule';
import { routeWith } from './route-with';

/** A battery fixed to the house is here or under discussion. */
export function fixedBattery(home: Home, routes: Routes): Trigger | null {
  if (home.facts.has('own-sources', 'home-battery')) return yes('home-battery');
  return routeWith(routes, hasFixedBattery, 'route-home-battery-plan');
}
