import type { Rule } from '../rule';
import { engineVehicle } from '../when/engine-vehicle';
import { firstOf } from '../when/first-of';
import { portableEngine } from '../when/portable-engine';
import { routeIn } from '../when/route-in';
import { said } from '../when/said';

/** Any portable source could be plugged into a wall outlet. It never may. */
export const noBackfeed: Rule = {
  id: 'no-backfeed',
  applies: (home, kinds) =>
    firstOf(
      portableEngine(home, kinds),
      engineVehicle(home, kinds),
      said({
        facts: home.facts,
        id: 'own-sources',
        choices: ['backfeed-cord', 'power-pack', 'ev-outlet'],
        because: 'You have a source that could be plugged into a wall outlet.',
        unknown: 'We do not know which sources and cords you have.',
      }),
      routeIn(kinds, ['power-pack', 'vehicle'], 'A source with outlets is in your plan.'),
    ),
};
