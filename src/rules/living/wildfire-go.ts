import type { Rule } from '../rule';
import { said } from '../when/said';

/** A wildfire order: go. */
export const wildfireGo: Rule = {
  id: 'wildfire-go',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'hazards',
      choices: ['wildfire'],
      because: 'named-wildfire',
      unknown: 'not-known-wildfire-reaches',
    }),
};
