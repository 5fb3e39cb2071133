import type { Rule } from '../rule';
import { liquidFuelEngine } from '../when/liquid-fuel-engine';

/** Never pour gasoline near a hot engine. */
export const refuelCool: Rule = {
  id: 'refuel-cool',
  applies: (home, routes) => liquidFuelEngine(home, routes),
};
