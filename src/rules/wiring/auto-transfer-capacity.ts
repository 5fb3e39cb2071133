import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** A source that takes over by itself carries everything, or something sheds load. */
export const autoTransferCapacity: Rule = {
  id: 'auto-transfer-capacity',
  applies: (_home, routes) =>
    routeWith(routes, (route) => route.automatic, 'source-takes-over-itself'),
};
