import type { Rule } from '../rule';
import { wiredRoute } from '../when/wired-route';

/** The plan is an estimate, not a design. */
export const estimatesOnly: Rule = {
  id: 'estimates-only',
  applies: (_home, routes) => wiredRoute(routes),
};
