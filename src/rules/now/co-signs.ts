import type { Rule } from '../rule';
import { said } from '../when/said';

/** Somebody is unwell or a generator runs near an opening: out, and 911. */
export const coSigns: Rule = {
  id: 'co-signs',
  applies: ({ facts }) =>
    said({
      facts,
      id: 'now-danger',
      choices: ['unwell', 'engine-near'],
      because: 'You told us someone is unwell or a generator runs close by.',
      unknown: 'We do not know whether someone is unwell right now.',
    }),
};
