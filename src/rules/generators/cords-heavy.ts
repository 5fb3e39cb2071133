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
        because: 'cords-light-ones',
        unknown: 'not-known-cords',
      }),
      routeWith(
        routes,
        (route) => route.vehicle && outletsOnly(route),
        'vehicle-power-through-cords',
      ),
      portableGenerator(home, routes),
    ),
};
