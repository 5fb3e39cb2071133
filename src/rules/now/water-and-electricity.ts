import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { feared } from '../when/floods';
import { said } from '../when/said';

/** Water near the panel, now or in a flood to come. */
export const waterAndElectricity: Rule = {
  id: 'water-and-electricity',
  applies: ({ facts }) =>
    firstOf(
      said({
        facts,
        id: 'now-danger',
        choices: ['water-electric'],
        because: 'told-water-near-electric',
        unknown: 'not-known-water-near-electric',
      }),
      said({
        facts,
        id: 'flood-history',
        choices: ['inside'],
        because: 'water-house',
        unknown: 'not-known-water-house',
      }),
      feared(facts),
    ),
};
