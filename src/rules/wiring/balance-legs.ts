import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** Chosen circuits must be shared out over both halves of the source. */
export const balanceLegs: Rule = {
  id: 'balance-legs',
  applies: (_home, kinds) =>
    routeIn(kinds, ['engine-inlet', 'battery-circuits'], 'Chosen circuits would be fed.'),
};
