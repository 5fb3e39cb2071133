import { hasGenerator, outletsOnly } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** A cord that does not reach 20 ft keeps the generator at the wall. */
export const cordReaches: Rule = {
  id: 'cord-reaches',
  applies: ({ facts }, routes) => {
    const needsNoCord =
      facts.told('engine-connect') && !facts.is('engine-connect', 'cords', 'not-connected');
    const owned = said({
      facts,
      id: 'own-sources',
      choices: ['engine-portable'],
      because: 'portable-generator',
      unknown: 'not-known-generator',
    });
    return both(
      said({
        facts,
        id: 'cords',
        choices: ['light', 'none'],
        because: 'no-heavy-cord-generator',
        unknown: 'not-known-cords-reach-far-enough',
      }),
      firstOf(
        routeWith(
          routes,
          (route) => hasGenerator(route) && outletsOnly(route),
          'generator-cords-plan',
        ),
        needsNoCord ? null : owned,
      ),
    );
  },
};
