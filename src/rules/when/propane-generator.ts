import type { Home } from '../../home/home';
import { type Routes, type Trigger, yes } from '../rule';
import { both } from './both';
import { knownGenerator } from './known-generator';

/** A generator that burns propane is here or under discussion. */
export function propaneGenerator(home: Home, routes: Routes): Trigger | null {
  const { facts } = home;
  if (facts.told('engine-fuel') && facts.is('engine-fuel', 'propane')) {
    return yes('generator-burns-propane');
  }
  const tank = facts.is('gas-supply', 'propane-tank') ? yes('house-propane-tank') : null;
  return both(tank, knownGenerator(home, routes));
}
