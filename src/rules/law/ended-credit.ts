import { hasFixedBattery } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** The federal credit for home solar and storage has ended. */
export const endedCredit: Rule = {
  id: 'ended-credit',
  applies: (_home, routes) => routeWith(routes, hasFixedBattery, 'storage-solar-plan'),
};
