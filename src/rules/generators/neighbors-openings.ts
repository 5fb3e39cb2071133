import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { portableGenerator } from '../when/portable-generator';
import { said } from '../when/said';
import { standbyGenerator } from '../when/standby-generator';

/** Homes that stand close: the exhaust goes to the neighbors. */
export const neighborsOpenings: Rule = {
  id: 'neighbors-openings',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'home-kind',
        choices: ['townhouse', 'apartment', 'manufactured'],
        because: 'neighbors-close',
        unknown: 'not-known-close-neighbors',
      }),
      firstOf(portableGenerator(home, routes), standbyGenerator(home, routes)),
    ),
};
