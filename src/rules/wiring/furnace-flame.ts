import { hasPortableGenerator, outletsOnly } from '../../kinds/ask-traits';
import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { manualGenerator } from '../when/manual-generator';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** A furnace that senses its flame through the ground quits on a floating neutral. */
export const furnaceFlame: Rule = {
  id: 'furnace-flame',
  applies: (home, routes) => {
    const { facts } = home;
    if (facts.told('engine-neutral') && facts.is('engine-neutral', 'bonded')) return null;
    return both(
      said({
        facts,
        id: 'heat-main',
        choices: ['gas-furnace', 'boiler'],
        because: 'heat-burner-feels-flame',
        unknown: 'not-known-heat-burner',
      }),
      firstOf(
        manualGenerator(home, routes),
        routeWith(
          routes,
          (route) => outletsOnly(route) || hasPortableGenerator(route),
          'portable-source-planned',
        ),
      ),
    );
  },
};
