import type { Home } from '../../home/home';
import { hasBattery } from '../../kinds/ask-traits';
import { type Routes, type Trigger, yes } from '../rule';
import { firstOf } from './first-of';
import { ifOpen } from './if-open';
import { routeWith } from './route-with';

/** A large rechargeable battery is here or under discussion: pack, wall battery or car. Not known: careful. */
export function anyBattery(home: Home, routes: Routes): Trigger | null {
  const { facts } = home;
  if (
    facts.has('own-sources', 'power-pack', 'home-battery', 'ev-outlet', 'hybrid-outlet') ||
    (facts.told('big-loads') && facts.has('big-loads', 'ev-charger'))
  ) {
    return yes('large-battery-pack-wall');
  }
  return firstOf(
    routeWith(routes, hasBattery, 'route-battery-plan'),
    ifOpen(facts, 'own-sources', 'not-known-batteries'),
  );
}
