import type { Rule } from '../rule';
import { propaneGenerator } from '../when/propane-generator';

/** Outdoor cold, F, at which a small cylinder gives too little gas (our judgement). */
const deepColdF = 20;

/** Propane in deep cold, and a tank that is part empty when the storm comes. */
export const propaneCold: Rule = {
  id: 'propane-cold',
  applies: (home, routes) => (home.site.coldF <= deepColdF ? propaneGenerator(home, routes) : null),
};
