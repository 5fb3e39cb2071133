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
      because: 'Your pack, battery or small UPS gives rough power.',
      unknown: 'We do not know whether your pack, battery or small UPS gives clean power.',
    }),
};
