import type { Rule } from '../rule';
import { townGasGenerator } from '../when/town-gas-generator';

/** Gas meter and pipe must carry a big generator on top of the house. */
export const gasMeter: Rule = {
  id: 'gas-meter',
  applies: (home, routes) => townGasGenerator(home, routes),
};
