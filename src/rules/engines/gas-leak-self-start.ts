import type { Rule } from '../rule';
import { both } from '../when/both';
import { said } from '../when/said';
import { standbyEngine } from '../when/standby-engine';

/** An engine that starts by itself near a gas leak. */
export const gasLeakSelfStart: Rule = {
  id: 'gas-leak-self-start',
  applies: (home, kinds) =>
    both(
      standbyEngine(home, kinds),
      said({
        facts: home.facts,
        id: 'gas-supply',
        choices: ['town-gas', 'propane-tank'],
        because: 'The house has gas.',
        unknown: 'We do not know whether the house has gas.',
      }),
    ),
};
