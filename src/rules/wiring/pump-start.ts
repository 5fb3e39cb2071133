import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';
import { withStarts } from '../when/with-starts';

/** A pump asks for several times its running power for a moment. */
export const pumpStart: Rule = {
  id: 'pump-start',
  applies: (home, routes) => {
    const { facts } = home;
    const start = both(
      facts.is('water-source', 'well', 'shallow-pump') && !facts.is('well-start-kind', 'soft-start')
        ? yes('well-pump-hard-start')
        : null,
      wiredRoute(routes),
    );
    return withStarts(start, home, ['well']);
  },
};
