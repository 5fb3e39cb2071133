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
        ? yes('told-power-not-even-blink')
        : null,
      routeWith(routes, isSource, 'every-source-plan-gap'),
    ),
};
