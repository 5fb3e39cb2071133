import type { Rule } from '../rule';
import { standbyEngine } from '../when/standby-engine';

/** 5 ft is a fire rule for fixed engines, not a safe distance for carbon monoxide. */
export const fixedEngineExhaust: Rule = {
  id: 'fixed-engine-exhaust',
  applies: (home, routes) => standbyEngine(home, routes),
};
