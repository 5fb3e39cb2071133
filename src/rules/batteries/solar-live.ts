import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { ownSolar } from '../when/own-solar';
import { routeWith } from '../when/route-with';

/** Panels are live whenever there is light. */
export const solarLive: Rule = {
  id: 'solar-live',
  applies: (home, routes) =>
    firstOf(
      ownSolar(home),
      routeWith(routes, (route) => route.roofSolar, 'solar-panels-plan'),
    ),
};
