import { hasPortableGenerator, isWired } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Exactly one neutral-to-ground bond; a generator of unknown neutral feeds no house. */
export const neutralBond: Rule = {
  id: 'neutral-bond',
  applies: (home, routes) =>
    firstOf(
      routeWith(
        routes,
        (route) => route.vehicle || (hasPortableGenerator(route) && isWired(route)),
        'source-own-bond-feed',
      ),
      home.facts.is('engine-connect', 'inlet', 'wall-outlet') || home.facts.open('engine-connect')
        ? said({
            facts: home.facts,
            id: 'engine-neutral',
            choices: ['bonded', 'floating', 'switchable'],
            because: 'generator-feeds-house-neutral',
            unknown: 'not-known-neutral-generator-set-too',
          })
        : null,
    ),
};
