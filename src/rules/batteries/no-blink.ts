import { isSource } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';

/** Things that may not blink need a small battery of their own. */
export const noBlink: Rule = {
  id: 'no-blink',
  applies: ({ facts }, routes) =>
    both(
      facts.told('goal-gap') && facts.is('goal-gap', 'no-blink')
        ? yes('You told us the power may not even blink.')
        : null,
      routeWith(routes, isSource, 'Every source in your plan has a gap.'),
    ),
};
