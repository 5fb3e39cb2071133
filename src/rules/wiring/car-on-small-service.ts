import { practice } from '../../tables/practice-figures';
import { type Rule, yes } from '../rule';

/** Share of the main from which a car charger is out of keeping with it. */
const largeShare = practice('large-charger-share');

/** A car charger that is large for the service. */
export const carOnSmallService: Rule = {
  id: 'car-on-small-service',
  applies: ({ facts }) => {
    const car = facts.told('ev-breaker') ? facts.number('ev-breaker') : null;
    const main = facts.told('main-amps') ? facts.number('main-amps') : null;
    return car !== null && main !== null && car >= largeShare * main
      ? yes({ code: 'charger-on-service', chargerAmps: car, mainAmps: main })
      : null;
  },
};
