import { hasFixedBattery, hasGenerator } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { knownGenerator } from '../when/known-generator';
import { routeWith } from '../when/route-with';

/** A generator that must charge a battery has to suit its charger. */
export const generatorChargesBattery: Rule = {
  id: 'engine-charges-battery',
  applies: (home, routes) =>
    firstOf(
      routeWith(
        routes,
        (route) => hasFixedBattery(route) && hasGenerator(route),
        'generator-charge-battery',
      ),
      both(
        home.facts.has('own-sources', 'power-pack', 'home-battery')
          ? yes('battery-generator-charge')
          : null,
        knownGenerator(home, routes),
      ),
    ),
};
