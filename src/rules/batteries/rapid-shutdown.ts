import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** New roof solar must drop its voltage fast, and be labelled. */
export const rapidShutdown: Rule = {
  id: 'rapid-shutdown',
  applies: (_home, kinds) => routeIn(kinds, ['battery-solar'], 'Roof solar is in your plan.'),
};
