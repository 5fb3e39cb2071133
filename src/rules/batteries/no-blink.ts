import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';
import { sourceKinds } from '../when/route-list';

/** Things that may not blink need a small battery of their own. */
export const noBlink: Rule = {
  id: 'no-blink',
  applies: ({ facts }, kinds) =>
    both(
      facts.told('goal-gap') && facts.is('goal-gap', 'no-blink')
        ? yes('You told us the power may not even blink.')
        : null,
      routeIn(kinds, sourceKinds, 'Every source in your plan has a gap.'),
    ),
};
