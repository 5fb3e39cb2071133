import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** A car charger is locked out in an outage. */
export const carOff: Rule = {
  id: 'car-off',
  applies: ({ facts }, routes) =>
    both(
      facts.told('big-loads') && facts.has('big-loads', 'ev-charger') ? yes('car-charger') : null,
      wiredRoute(routes),
    ),
};
