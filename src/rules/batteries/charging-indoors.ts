import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** A pack that is charged in the house. */
export const chargingIndoors: Rule = {
  id: 'charging-indoors',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'power-pack') ? yes('You have a power pack.') : null,
      routeIn(kinds, ['power-pack', 'single-battery'], 'A battery to plug in is in your plan.'),
    ),
};
