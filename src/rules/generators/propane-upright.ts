import type { Rule } from '../rule';
import { propaneGenerator } from '../when/propane-generator';

/** Propane cylinders: outdoors, upright, shut when not in use. */
export const propaneUpright: Rule = {
  id: 'propane-upright',
  applies: (home, routes) => propaneGenerator(home, routes),
};
