import type { Rule } from '../rule';
import { routeIn } from '../when/route-in';
import { sourceKinds } from '../when/route-list';

/** A backup that was never tried fails on the day. */
export const rehearseOnce: Rule = {
  id: 'rehearse-once',
  applies: (_home, kinds) =>
    routeIn(kinds, sourceKinds, 'A source you have not tried yet is in your plan.'),
};
