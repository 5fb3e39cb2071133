import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { knownEngine } from '../when/known-engine';
import { routeIn } from '../when/route-in';

/** An engine that must charge a battery has to suit its charger. */
export const engineChargesBattery: Rule = {
  id: 'engine-charges-battery',
  applies: (home, kinds) =>
    firstOf(
      routeIn(kinds, ['battery-engine'], 'An engine would charge the battery.'),
      both(
        home.facts.has('own-sources', 'power-pack', 'home-battery')
          ? yes('You have a battery and an engine that could charge it.')
          : null,
        knownEngine(home, kinds),
      ),
    ),
};
