import type { Rule } from '../rule';
import { careful, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';
import { said } from '../when/said';

/** Solar counted on in winter, smoke or snow. */
export const winterSun: Rule = {
  id: 'winter-sun',
  applies: ({ facts, goalSeasons }, routes) =>
    both(
      firstOf(
        facts.told('goal-season') && goalSeasons.includes('winter')
          ? yes('The plan must work in winter.')
          : null,
        facts.open('goal-season')
          ? careful('The plan may have to work in winter.', 'goal-season')
          : null,
        said({
          facts,
          id: 'hazards',
          choices: ['wildfire', 'ice-snow'],
          because: 'Smoke or snow can cover the sun for days.',
          unknown: 'We do not know whether smoke or snow reaches you.',
        }),
      ),
      firstOf(
        facts.has('own-sources', 'solar') ? yes('You count on solar.') : null,
        routeWith(routes, (route) => route.roofSolar, 'Solar is in your plan.'),
      ),
    ),
};
