import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { portableEngine } from '../when/portable-engine';
import { said } from '../when/said';
import { standbyEngine } from '../when/standby-engine';

/** Homes that stand close: the exhaust goes to the neighbors. */
export const neighborsOpenings: Rule = {
  id: 'neighbors-openings',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'home-kind',
        choices: ['townhouse', 'apartment', 'manufactured'],
        because: 'Your neighbors are close by.',
        unknown: 'We do not know how close your neighbors are.',
      }),
      firstOf(portableEngine(home, routes), standbyEngine(home, routes)),
    ),
};
