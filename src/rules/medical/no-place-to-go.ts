import type { Rule } from '../rule';
import { said } from '../when/said';

/** There is nowhere to go yet, or the place may lose its power too. */
export const noPlaceToGo: Rule = {
  id: 'no-place-to-go',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'leave-place',
      choices: ['none'],
      because: 'no-place-go-yet',
      unknown: 'not-known-go',
    }),
};
