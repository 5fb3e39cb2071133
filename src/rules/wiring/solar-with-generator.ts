import { hasGenerator, isWired } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { ownSolar } from '../when/own-solar';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Roof solar and a generator on one panel: solar may push power into the engine. */
export const solarWithGenerator: Rule = {
  id: 'solar-with-engine',
  applies: (home, routes) =>
    both(
      ownSolar(home),
      firstOf(
        said({
          facts: home.facts,
          id: 'own-sources',
          choices: ['engine-portable', 'engine-standby', 'ev-outlet', 'hybrid-outlet'],
          because: 'generator-vehicle-gives-power',
          unknown: 'not-known-generator',
        }),
        routeWith(
          routes,
          (route) => route.vehicle || (hasGenerator(route) && isWired(route)),
          'generator-feed-same-panel',
        ),
      ),
    ),
};
