import type { Home } from '../../home/home';
import { fixedBatteryKinds, type RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';
import { routeIn } from './route-in';

/** A battery fixed to the house is here or under discussion. */
export function fixedBattery(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  if (home.facts.has('own-sources', 'home-battery')) return yes('You have a home battery.');
  return routeIn(kinds, fixedBatteryKinds, 'A route with a home battery is in your plan.');
}
