import type { Rule } from '../rule';
import { knownEngine } from '../when/known-engine';

/** The big number on the box is not what an engine can carry. */
export const startWatts: Rule = {
  id: 'start-watts',
  applies: (home, routes) => knownEngine(home, routes),
};
