import type { Rule } from '../rule';
import { knownGenerator } from '../when/known-generator';

/** A generator that has stood for months does not start on the day. */
export const generatorExercise: Rule = {
  id: 'engine-exercise',
  applies: (home, routes) => knownGenerator(home, routes),
};
