import type { Rule } from '../rule';
import { portableGenerator } from '../when/portable-generator';

/** A shut-off helps but never allows a shorter distance; prefer low emission and shut-off. */
export const coShutoffNoSubstitute: Rule = {
  id: 'co-shutoff-no-substitute',
  applies: (home, routes) => portableGenerator(home, routes),
};
