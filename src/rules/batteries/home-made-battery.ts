import type { Rule } from '../rule';
import { said } from '../when/said';

/** Home-made, unlisted or of a kind nobody knows. */
export const homeMadeBattery: Rule = {
  id: 'home-made-battery',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'battery-kind',
      choices: ['home-made'],
      because: 'home-made-battery',
      unknown: 'not-known-kind-battery',
    }),
};
