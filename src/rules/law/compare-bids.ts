import type { Rule } from '../rule';
import { wiredRoute } from '../when/wired-route';

/** Bids are compared by figures. */
export const compareBids: Rule = {
  id: 'compare-bids',
  applies: (_home, routes) => wiredRoute(routes),
};
