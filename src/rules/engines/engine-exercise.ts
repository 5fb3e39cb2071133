import type { Rule } from '../rule';
import { knownEngine } from '../when/known-engine';

/** An engine that has stood for months does not start on the day. */
export const engineExercise: Rule = {
  id: 'engine-exercise',
  applies: (home, routes) => knownEngine(home, routes),
};
