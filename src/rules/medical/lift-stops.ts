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
      because: 'Someone here depends on an elevator or a stair lift.',
      unknown: 'We do not know whether someone here depends on an elevator or a stair lift.',
    }),
};
