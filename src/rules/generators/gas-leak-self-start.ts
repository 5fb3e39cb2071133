import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { ifOpen } from '../when/if-open';
import { said } from '../when/said';
import { standbyGenerator } from '../when/standby-generator';

/** A generator that starts by itself near a gas leak. */
export const gasLeakSelfStart: Rule = {
  id: 'gas-leak-self-start',
  applies: (home, routes) => {
    const unknown = 'not-known-house-gas';
    const gas = said({
      facts: home.facts,
      id: 'gas-supply',
      choices: ['town-gas', 'propane-tank'],
      because: 'house-gas',
      unknown,
    });
    const generator = standbyGenerator(home, routes);
    return both(firstOf(gas, ifOpen(home.facts, 'gas-supply', unknown)), generator);
  },
};
