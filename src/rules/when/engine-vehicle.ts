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
    return yes('hybrid-engine-vehicle-outlet');
  }
  if (facts.told('vehicle-kind')) {
    return facts.is('vehicle-kind', 'battery-only') ? null : yes('vehicle-engine-give-power');
  }
  if (facts.open('vehicle-kind') || routes.some((route) => route.vehicle)) {
    return careful(
      'not-known-vehicle-engine',
      facts.open('vehicle-kind') ? 'vehicle-kind' : 'own-sources',
    );
  }
  return ifOpen(facts, 'own-sources', 'not-known-vehicle-give-power');
}
