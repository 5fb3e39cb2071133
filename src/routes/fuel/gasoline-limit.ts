import type { Home } from '../../home/home';
import { fuelStorage } from '../../tables/fuel-storage';
import { namedValue } from '../../tables/named-values';

/**
 * Gasoline that may usually be kept at a home, gal: less where it is kept in a garage that is part of the house.
 * From memory of the fire codes; the fire department decides, and many places allow less.
 */
export function gasolineLimitGal({ facts }: Home): number {
  const attached = facts.told('gasoline-place') && facts.is('gasoline-place', 'attached-garage');
  const row = attached ? 'gasoline-attached-garage-gal' : 'gasoline-total-gal';
  return namedValue(fuelStorage, row).value;
}
