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
      because: 'You have no place to go to yet.',
      unknown: 'We do not know where you would go.',
    }),
};
