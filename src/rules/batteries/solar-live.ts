import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { ownSolar } from '../when/own-solar';
import { routeIn } from '../when/route-in';

/** Panels are live whenever there is light. */
export const solarLive: Rule = {
  id: 'solar-live',
  applies: (home, kinds) =>
    firstOf(ownSolar(home), routeIn(kinds, ['battery-solar'], 'Solar panels are in your plan.')),
};
