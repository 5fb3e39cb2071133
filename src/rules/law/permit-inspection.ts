import type { Rule } from '../rule';
import { wiredRoute } from '../when/wired-route';

/** Fixed equipment: permit and inspection. */
export const permitInspection: Rule = {
  id: 'permit-inspection',
  applies: (_home, routes) => wiredRoute(routes),
};
