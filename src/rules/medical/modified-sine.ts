import type { Rule } from '../rule';
import { said } from '../when/said';

/** A pack, battery or small UPS of their own gives rough power, where motors or health devices may hang on it. */
export const modifiedSine: Rule = {
  id: 'modified-sine',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'pack-wave',
      choices: ['modified'],
      because: 'pack-battery-small-ups',
      unknown: 'not-known-pack-battery-small-ups',
    }),
};
