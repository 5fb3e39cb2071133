import type { Rule } from '../rule';
import { propaneEngine } from '../when/propane-engine';

/** Propane cylinders: outdoors, upright, shut when not in use. */
export const propaneUpright: Rule = {
  id: 'propane-upright',
  applies: (home, routes) => propaneEngine(home, routes),
};
