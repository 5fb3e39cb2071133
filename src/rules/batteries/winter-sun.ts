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
          ? yes('plan-must-work-winter')
          : null,
        facts.open('goal-season') ? careful('plan-work-winter', 'goal-season') : null,
        said({
          facts,
          id: 'hazards',
          choices: ['wildfire', 'ice-snow'],
          because: 'smoke-snow-cover-sun',
          unknown: 'not-known-smoke-snow-reaches',
        }),
      ),
      firstOf(
        facts.has('own-sources', 'solar') ? yes('count-solar') : null,
        routeWith(routes, (route) => route.roofSolar, 'solar-plan'),
      ),
    ),
};
