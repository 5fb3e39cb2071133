import type { Rule } from '../rule';
import { knownGenerator } from '../when/known-generator';

/** The big number on the box is not what a generator can carry. */
export const startWatts: Rule = {
  id: 'start-watts',
  applies: (home, routes) => knownGenerator(home, routes),
};
