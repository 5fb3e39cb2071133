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
    return yes('You have a large battery, in a pack, on a wall or in a car.');
  }
  return firstOf(
    routeWith(routes, hasBattery, 'A route with a battery is in your plan.'),
    ifOpen(facts, 'own-sources', 'We do not know which batteries you have.'),
  );
}
