import { hasFixedBattery } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** Roof, wall or floor must carry the weight. */
export const roofLoad: Rule = {
  id: 'roof-load',
  applies: (_home, routes) => routeWith(routes, hasFixedBattery, 'heavy-fixed-equipment-plan'),
};
