import type { Rule } from '../rule';
import { engineVehicle } from '../when/engine-vehicle';

/** A hybrid left on starts its generator by itself. Unknown kind of vehicle counts as a generator. */
export const hybridStartsItself: Rule = {
  id: 'hybrid-starts-itself',
  applies: (home, routes) => engineVehicle(home, routes),
};
