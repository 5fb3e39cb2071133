import { outletsOnly } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Power goes through cords: thick, outdoor, whole and not covered. */
export const cordsHeavy: Rule = {
  id: 'cords-heavy',
  applies: (home, routes) =>
    firstOf(
      said({
        facts: home.facts,
        id: 'cords',
        choices: ['light'],
        because: 'The cords you have are light ones.',
        unknown: 'We do not know which cords you have.',
      }),
      routeWith(
        routes,
        (route) => route.vehicle && outletsOnly(route),
        'A vehicle would power things through cords.',
      ),
      portableGenerator(home, routes),
    ),
};
