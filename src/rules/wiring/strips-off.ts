import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** Electric heat strips come on by themselves and pull any source down. */
export const stripsOff: Rule = {
  id: 'strips-off',
  applies: ({ facts }, kinds) =>
    both(
      (facts.number('heat-strips') ?? 0) > 0
        ? yes(`There are about ${facts.number('heat-strips')} kW of electric heat here.`)
        : null,
      wiredRoute(kinds),
    ),
};
