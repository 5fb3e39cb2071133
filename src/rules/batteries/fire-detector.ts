import type { Rule } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';
import { said } from '../when/said';

/** Smoke or heat detection in the room of the battery. */
export const fireDetector: Rule = {
  id: 'fire-detector',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'battery-place',
        choices: ['utility-room', 'basement', 'attached-garage', 'bedroom-living'],
        because: 'battery-stand-inside-garage',
        unknown: 'not-known-battery-stand-inside',
      }),
      fixedBattery(home, routes),
    ),
};
