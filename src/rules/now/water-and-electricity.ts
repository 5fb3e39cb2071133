import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
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
        because: 'You told us of water near electric things.',
        unknown: 'We do not know whether water is near electric things.',
      }),
      said({
        facts,
        id: 'flood-history',
        choices: ['inside'],
        because: 'Water has been in the house.',
        unknown: 'We do not know whether water has been in the house.',
      }),
      said({
        facts,
        id: 'hazards',
        choices: ['flood', 'hurricane'],
        because: 'You named floods or hurricanes.',
        unknown: 'We do not know whether floods reach you.',
      }),
    ),
};
