import { fixedBatteryKinds } from '../../home/route-kind';
import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** Roof, wall or floor must carry the weight. */
export const roofLoad: Rule = {
  id: 'roof-load',
  applies: (_home, kinds) =>
    routeIn(kinds, fixedBatteryKinds, 'Heavy fixed equipment is in your plan.'),
};
