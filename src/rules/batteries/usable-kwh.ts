import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** The size on the box is not what comes out. */
export const usableKwh: Rule = {
  id: 'usable-kwh',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.has('own-sources', 'power-pack', 'home-battery') ? yes('battery') : null,
      routeWith(routes, (route) => route.battery !== 'none', 'battery-plan'),
    ),
};
