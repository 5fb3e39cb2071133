import type { Rule } from '../rule';
import { both } from '../when/both';
import { said } from '../when/said';
import { townGasGenerator } from '../when/town-gas-generator';

/** A quake can shut the gas that feeds the engine. */
export const quakeValve: Rule = {
  id: 'quake-valve',
  applies: (home, routes) =>
    both(
      said({
        facts: home.facts,
        id: 'hazards',
        choices: ['earthquake'],
        because: 'named-earthquakes',
        unknown: 'not-known-earthquakes-reach',
      }),
      townGasGenerator(home, routes),
    ),
};
