import type { Home } from '../../home/home';
import type { RouteKind } from '../../home/route-kind';
import { type Trigger, yes } from '../rule';
import { both } from './both';
import { routeIn } from './route-in';

/** An engine that burns gas from the street is here or under discussion. */
export function townGasEngine(home: Home, kinds: ReadonlySet<RouteKind>): Trigger | null {
  const { facts } = home;
  if (facts.told('engine-fuel') && facts.is('engine-fuel', 'natural-gas')) {
    return yes('Your engine burns gas from the street.');
  }
  const street = facts.is('gas-supply', 'town-gas')
    ? yes('The house has gas from the street.')
    : null;
  return both(
    street,
    facts.has('own-sources', 'engine-standby')
      ? yes('You have a standby engine.')
      : routeIn(kinds, ['standby-engine'], 'A fixed engine is in your plan.'),
  );
}
