import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** New roof solar must drop its voltage fast, and be labelled. */
export const rapidShutdown: Rule = {
  id: 'rapid-shutdown',
  applies: (_home, routes) => routeWith(routes, (route) => route.roofSolar, 'roof-solar-plan'),
};
