import type { Home } from '../../home/home';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import { type Routes, type Trigger, yes } from '../rule';
import { both } from './both';
import { routeWith } from './route-with';

/** A generator that burns gas from the street is here or under discussion. */
export function townGasGenerator(home: Home, routes: Routes): Trigger | null {
  const { facts } = home;
  if (facts.told('engine-fuel') && facts.is('engine-fuel', 'natural-gas')) {
    return yes('generator-burns-gas-from');
  }
  const street = facts.is('gas-supply', 'town-gas') ? yes('house-gas-from-street') : null;
  return both(
    street,
    facts.has('own-sources', 'engine-standby')
      ? yes('standby-generator')
      : routeWith(routes, hasFixedGenerator, 'fixed-generator-plan'),
  );
}
