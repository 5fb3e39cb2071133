import { fuelStorage } from '../../tables/fuel-storage';
import { namedValue } from '../../tables/named-values';
import { type Rule, yes } from '../rule';

/** More gasoline than is commonly allowed there. */
export const fuelTooMuch: Rule = {
  id: 'fuel-too-much',
  applies: ({ facts }) => {
    const gallons = facts.told('gasoline-gallons') ? facts.number('gasoline-gallons') : null;
    const garage = facts.is('gasoline-place', 'attached-garage');
    const limit = namedValue(
      fuelStorage,
      garage ? 'gasoline-attached-garage-gal' : 'gasoline-total-gal',
    ).value;
    return gallons !== null && gallons > limit
      ? yes({ code: 'fuel-over-limit', gallons, limitGallons: limit })
      : null;
  },
};
