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
      because: 'told-someone-unwell-generator-runs',
      unknown: 'not-known-someone-unwell-right-now',
    }),
};
