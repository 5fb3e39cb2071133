import type { Rule } from '../rule';
import { townGasEngine } from '../when/town-gas-engine';

/** Gas meter and pipe must carry a big engine on top of the house. */
export const gasMeter: Rule = {
  id: 'gas-meter',
  applies: (home, routes) => townGasEngine(home, routes),
};
