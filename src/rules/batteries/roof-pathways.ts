import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** Paths and ridge space for fire crews on a roof with solar. */
export const roofPathways: Rule = {
  id: 'roof-pathways',
  applies: (_home, routes) => routeWith(routes, (route) => route.roofSolar, 'roof-solar-plan'),
};
