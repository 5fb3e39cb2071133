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
        ? yes('heat-electric-none')
        : null,
      firstOf(
        facts.has('own-sources', 'power-pack') ? yes('power-pack') : null,
        routeWith(routes, isPack, 'small-battery-plan'),
      ),
    ),
};
