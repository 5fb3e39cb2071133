import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** Sign, and shut-off within sight, at an engine's inlet. */
export const inletSign: Rule = {
  id: 'inlet-sign',
  applies: (_home, kinds) =>
    routeIn(kinds, ['engine-inlet'], 'A route with an inlet is in your plan.'),
};
