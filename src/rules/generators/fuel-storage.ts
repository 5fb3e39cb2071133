import type { Rule } from '../rule';
import { yes } from '../rule';
import { firstOf } from '../when/first-of';
import { liquidFuelGenerator } from '../when/liquid-fuel-generator';

/** Fuel is kept, or will be. */
export const fuelStorage: Rule = {
  id: 'fuel-storage',
  applies: (home, routes) =>
    firstOf(
      home.facts.told('gasoline-gallons') && (home.facts.number('gasoline-gallons') ?? 0) > 0
        ? yes('keep-gasoline-plan')
        : null,
      liquidFuelGenerator(home, routes),
    ),
};
