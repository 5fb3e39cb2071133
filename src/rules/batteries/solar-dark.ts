import type { Rule } from '../rule';
import { said } from '../when/said';

/** Solar with no battery is dark in an outage until it has been shown otherwise. */
export const solarDark: Rule = {
  id: 'solar-dark',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'solar-in-outage',
      choices: ['nothing', 'one-outlet', 'never-tried'],
      because: 'solar-not-shown-run',
      unknown: 'not-known-solar-outage',
    }),
};
