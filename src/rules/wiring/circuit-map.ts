import { feedsCircuits } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Nobody knows which breaker feeds what. */
export const circuitMap: Rule = {
  id: 'circuit-map',
  applies: ({ facts }, routes) =>
    both(
      said({
        facts,
        id: 'panel-map',
        choices: ['some', 'none'],
        because: 'not-every-breaker-marked',
        unknown: 'not-known-breakers-marked',
      }),
      routeWith(routes, feedsCircuits, 'chosen-circuits-fed'),
    ),
};
