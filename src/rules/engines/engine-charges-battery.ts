import { hasFixedBattery, hasGenerator } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { knownEngine } from '../when/known-engine';
import { routeWith } from '../when/route-with';

/** An engine that must charge a battery has to suit its charger. */
export const engineChargesBattery: Rule = {
  id: 'engine-charges-battery',
  applies: (home, routes) =>
    firstOf(
      routeWith(
        routes,
        (route) => hasFixedBattery(route) && hasGenerator(route),
        'A generator would charge the battery.',
      ),
      both(
        home.facts.has('own-sources', 'power-pack', 'home-battery')
          ? yes('You have a battery and a generator that could charge it.')
          : null,
        knownEngine(home, routes),
      ),
    ),
};
