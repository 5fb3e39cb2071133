import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { ifOpen } from '../when/if-open';
import { said } from '../when/said';

/** An oven, a grill or a heater with no chimney as second heat. Not known: careful. */
export const ovenHeat: Rule = {
  id: 'oven-heat',
  applies: ({ facts }) =>
    firstOf(
      said({
        facts,
        id: 'heat-second',
        choices: ['unvented', 'oven-or-grill'],
        because: 'heat-oven-grill-burner',
        unknown: 'not-known-heat-no-power',
      }),
      ifOpen(facts, 'heat-second', 'not-known-heat-no-power'),
    ),
};
