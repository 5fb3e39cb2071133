import { automaticKinds } from '../../home/route-kind';
import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';

/** A source that takes over by itself carries everything, or something sheds load. */
export const autoTransferCapacity: Rule = {
  id: 'auto-transfer-capacity',
  applies: (_home, kinds) =>
    routeIn(kinds, automaticKinds, 'A source that takes over by itself is in your plan.'),
};
