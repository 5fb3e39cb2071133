import { isPack } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** A plug-in heater empties a pack in about an hour. */
export const heaterOnPack: Rule = {
  id: 'heater-on-pack',
  applies: ({ facts }, routes) =>
    both(
      facts.is('heat-main', 'baseboard', 'electric-furnace', 'heat-pump', 'none')
        ? yes('Your heat is electric, or you have none.')
        : null,
      firstOf(
        facts.has('own-sources', 'power-pack') ? yes('You have a power pack.') : null,
        routeWith(routes, isPack, 'A small battery is in your plan.'),
      ),
    ),
};
