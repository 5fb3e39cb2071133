import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { ifOpen } from '../when/if-open';
import { portableEngine } from '../when/portable-engine';

/** No engine in, on or beside an apartment building. An unknown home with an engine: careful. */
export const apartmentNoEngine: Rule = {
  id: 'apartment-no-engine',
  applies: (home, routes) =>
    firstOf(
      home.facts.told('home-kind') && home.facts.is('home-kind', 'apartment')
        ? yes('You live in an apartment.')
        : null,
      both(
        ifOpen(home.facts, 'home-kind', 'We do not know whether you live in an apartment.'),
        portableEngine(home, routes),
      ),
    ),
};
