import type { Rule } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';
import { said } from '../when/said';

/** Nobody knows which breaker feeds what. */
export const circuitMap: Rule = {
  id: 'circuit-map',
  applies: ({ facts }, kinds) =>
    both(
      said({
        facts,
        id: 'panel-map',
        choices: ['some', 'none'],
        because: 'Not every breaker is marked with what it feeds.',
        unknown: 'We do not know whether the breakers are marked.',
      }),
      routeIn(kinds, ['engine-inlet', 'battery-circuits'], 'Chosen circuits would be fed.'),
    ),
};
