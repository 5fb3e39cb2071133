import { fixedBatteryKinds } from '../../home/route-kind';
import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** The federal credit for home solar and storage has ended. */
export const endedCredit: Rule = {
  id: 'ended-credit',
  applies: (_home, kinds) => routeIn(kinds, fixedBatteryKinds, 'Storage or solar is in your plan.'),
};
