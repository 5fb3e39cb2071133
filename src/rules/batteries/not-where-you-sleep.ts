import type { Rule } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';
import { said } from '../when/said';

/** A home battery in a bedroom or living room. */
export const notWhereYouSleep: Rule = {
  id: 'not-where-you-sleep',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'battery-place',
        choices: ['bedroom-living'],
        because: 'named-bedroom-living-room-battery',
        unknown: 'not-known-battery-stand',
      }),
      fixedBattery(home, routes),
    ),
};
