import type { Rule } from '../rule';
import { standbyGenerator } from '../when/standby-generator';

/** 5 ft is a fire rule for fixed generators, not a safe distance for carbon monoxide. */
export const fixedGeneratorExhaust: Rule = {
  id: 'fixed-engine-exhaust',
  applies: (home, routes) => standbyGenerator(home, routes),
};
