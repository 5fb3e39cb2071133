import { isSource } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { routeWith } from '../when/route-with';

/** A backup that was never tried fails on the day. */
export const rehearseOnce: Rule = {
  id: 'rehearse-once',
  applies: (_home, routes) => routeWith(routes, isSource, 'source-not-tried-yet'),
};
