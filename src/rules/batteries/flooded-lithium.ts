import type { Rule } from '../rule';
import { anyBattery } from '../when/any-battery';
import { both } from '../when/both';
import { floods } from '../when/floods';

/** A lithium battery that has been under water can burn days or weeks later. */
export const floodedLithium: Rule = {
  id: 'flooded-lithium',
  applies: (home, routes) => both(floods(home.facts), anyBattery(home, routes)),
};
