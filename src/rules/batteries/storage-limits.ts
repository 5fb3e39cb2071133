import type { Rule } from '../rule';
import { fixedBattery } from '../when/fixed-battery';

/** How much may stand where: 20 kWh a unit, 40 and 80 kWh a place. */
export const storageLimits: Rule = {
  id: 'storage-limits',
  applies: (home, routes) => fixedBattery(home, routes),
};
