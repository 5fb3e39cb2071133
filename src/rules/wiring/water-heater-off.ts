import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** Electric hot water is locked out, or given an hour of its own. */
export const waterHeaterOff: Rule = {
  id: 'water-heater-off',
  applies: ({ facts }, routes) =>
    both(
      facts.told('water-heater') &&
        facts.is('water-heater', 'electric-tank', 'tankless-electric', 'heat-pump-tank')
        ? yes('hot-water-electric')
        : null,
      wiredRoute(routes),
    ),
};
