import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** Paths and ridge space for fire crews on a roof with solar. */
export const roofPathways: Rule = {
  id: 'roof-pathways',
  applies: (_home, kinds) => routeIn(kinds, ['battery-solar'], 'Roof solar is in your plan.'),
};
