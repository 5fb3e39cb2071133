import type { Rule } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';
import { said } from '../when/said';

/** A battery that a car could run into. */
export const carImpact: Rule = {
  id: 'car-impact',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'battery-place',
        choices: ['attached-garage', 'detached'],
        because: 'named-garage-outbuilding-battery',
        unknown: 'not-known-car-reach-battery',
      }),
      fixedBattery(home, routes),
    ),
};
