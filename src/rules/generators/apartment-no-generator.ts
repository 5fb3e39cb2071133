import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { ifOpen } from '../when/if-open';
import { portableGenerator } from '../when/portable-generator';

/** No generator in, on or beside an apartment building. An unknown home with a generator: careful. */
export const apartmentNoGenerator: Rule = {
  id: 'apartment-no-engine',
  applies: (home, routes) =>
    firstOf(
      home.facts.told('home-kind') && home.facts.is('home-kind', 'apartment')
        ? yes('live-apartment')
        : null,
      both(
        ifOpen(home.facts, 'home-kind', 'not-known-live-apartment'),
        portableGenerator(home, routes),
      ),
    ),
};
