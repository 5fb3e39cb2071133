import type { Rule } from '../rule';
import { said } from '../when/said';

/** An elevator or stair lift is the way in and out. */
export const liftStops: Rule = {
  id: 'lift-stops',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'access-lifts',
      choices: ['elevator', 'stairlift'],
      because: 'someone-depends-elevator-stair',
      unknown: 'not-known-someone-depends-elevator-stair',
    }),
};
