import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** On its own a source must carry at least the largest single thing joined to it. */
export const largestLoad: Rule = {
  id: 'largest-load',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.told('home-kind') && facts.is('home-kind', 'off-grid')
        ? yes('Your home makes all its own power.')
        : null,
      routeIn(kinds, ['battery-circuits'], 'A battery on chosen circuits is in your plan.'),
    ),
};
