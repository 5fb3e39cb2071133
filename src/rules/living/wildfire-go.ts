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
      because: 'You named wildfire.',
      unknown: 'We do not know whether wildfire reaches you.',
    }),
};
