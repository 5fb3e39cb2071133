import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** Electric heat strips come on by themselves and pull any source down. */
export const stripsOff: Rule = {
  id: 'strips-off',
  applies: ({ facts }, routes) => {
    const kw = facts.number('heat-strips') ?? 0;
    if (kw <= 0) return null;
    return both(
      facts.told('heat-strips')
        ? yes({ code: 'electric-heat-kw', kw })
        : careful({ code: 'electric-heat-kw-maybe', kw }, 'heat-strips'),
      wiredRoute(routes),
    );
  },
};
