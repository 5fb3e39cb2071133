import { isPack } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** A pack that is charged in the house. */
export const chargingIndoors: Rule = {
  id: 'charging-indoors',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.has('own-sources', 'power-pack') ? yes('power-pack') : null,
      routeWith(routes, isPack, 'battery-plug-plan'),
    ),
};
