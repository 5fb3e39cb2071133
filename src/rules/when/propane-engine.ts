import type { Home } from '../../home/home';
import { type Routes, type Trigger, yes } from '../rule';
import { both } from './both';
import { knownEngine } from './known-engine';

/** An engine that burns propane is here or under discussion. */
export function propaneEngine(home: Home, routes: Routes): Trigger | null {
  const { facts } = home;
  if (facts.told('engine-fuel') && facts.is('engine-fuel', 'propane')) {
    return yes('Your generator burns propane.');
  }
  const tank = facts.is('gas-supply', 'propane-tank') ? yes('The house has a propane tank.') : null;
  return both(tank, knownEngine(home, routes));
}
