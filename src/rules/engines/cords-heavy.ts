import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { portableEngine } from '../when/portable-engine';
import { routeIn } from '../when/route-in';
import { said } from '../when/said';

/** Power goes through cords: thick, outdoor, whole and not covered. */
export const cordsHeavy: Rule = {
  id: 'cords-heavy',
  applies: (home, kinds) =>
    firstOf(
      said({
        facts: home.facts,
        id: 'cords',
        choices: ['light'],
        because: 'The cords you have are light ones.',
        unknown: 'We do not know which cords you have.',
      }),
      routeIn(kinds, ['vehicle'], 'A vehicle would power things through cords.'),
      portableEngine(home, kinds),
    ),
};
