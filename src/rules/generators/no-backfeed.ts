import { outletsOnly } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Any portable source could be plugged into a wall outlet. It never may. */
export const noBackfeed: Rule = {
  id: 'no-backfeed',
  applies: (home, routes) =>
    firstOf(
      portableGenerator(home, routes),
      engineVehicle(home, routes),
      said({
        facts: home.facts,
        id: 'own-sources',
        choices: ['backfeed-cord', 'power-pack', 'ev-outlet'],
        because: 'source-plugged-into-wall',
        unknown: 'not-known-sources-cords',
      }),
      routeWith(routes, outletsOnly, 'source-outlets-plan'),
    ),
};
