import type { Rule } from '../rule';
import { vehicleSource } from '../when/vehicle-source';

/** A vehicle is also how you leave. */
export const vehicleChargeLeft: Rule = {
  id: 'vehicle-charge-left',
  applies: ({ facts }, routes) => vehicleSource(facts, routes),
};
