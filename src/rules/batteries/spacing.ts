import type { Rule } from '../rule';
import { fixedBattery } from '../when/fixed-battery';

/** 3 ft between units and from doors and windows. */
export const spacing: Rule = {
  id: 'spacing',
  applies: (home, routes) => fixedBattery(home, routes),
};
