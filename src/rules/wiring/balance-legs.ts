import { feedsCircuits } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** Chosen circuits must be shared out over both halves of the source. */
export const balanceLegs: Rule = {
  id: 'balance-legs',
  applies: (_home, routes) => routeWith(routes, feedsCircuits, 'chosen-circuits-fed'),
};
