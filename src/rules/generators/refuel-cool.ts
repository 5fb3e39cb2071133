import type { Rule } from '../rule';
import { liquidFuelGenerator } from '../when/liquid-fuel-generator';

/** Never pour gasoline near a hot engine. */
export const refuelCool: Rule = {
  id: 'refuel-cool',
  applies: (home, routes) => liquidFuelGenerator(home, routes),
};
