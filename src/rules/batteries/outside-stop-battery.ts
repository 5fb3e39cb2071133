import type { Rule } from '../rule';
import { fixedBattery } from '../when/fixed-battery';

/** A shut-off for the battery that fire crews can reach. */
export const outsideStopBattery: Rule = {
  id: 'outside-stop-battery',
  applies: (home, routes) => fixedBattery(home, routes),
};
