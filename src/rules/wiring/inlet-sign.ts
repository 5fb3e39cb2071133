import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** Sign, and shut-off within sight, at a generator's inlet. */
export const inletSign: Rule = {
  id: 'inlet-sign',
  applies: (_home, routes) =>
    routeWith(routes, (route) => route.connection === 'inlet', 'route-inlet-plan'),
};
