import type { Home } from '../../home/home';
import { careful, type Routes, type Trigger, yes } from '../rule';
import { ifOpen } from './if-open';

/**
 * A vehicle with a generator may be used as a power source. A vehicle of unknown kind counts as one
 * with a generator; one the household calls battery-only does not, unless it also named a hybrid.
 */
export function engineVehicle(home: Home, routes: Routes): Trigger | null {
  const { facts } = home;
  if (facts.told('own-sources') && facts.has('own-sources', 'hybrid-outlet')) {
    return yes('You have a hybrid or engine vehicle with an outlet.');
  }
  if (facts.told('vehicle-kind')) {
    return facts.is('vehicle-kind', 'battery-only')
      ? null
      : yes('Your vehicle has an engine and can give power.');
  }
  if (facts.open('vehicle-kind') || routes.some((route) => route.vehicle)) {
    return careful(
      'We do not know whether the vehicle has an engine.',
      facts.open('vehicle-kind') ? 'vehicle-kind' : 'own-sources',
    );
  }
  return ifOpen(facts, 'own-sources', 'We do not know whether a vehicle would give power.');
}
