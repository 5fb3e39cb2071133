import type { Rule } from '../rule';
import { both } from '../when/both';
import { device } from '../when/device';
import { firstOf } from '../when/first-of';
import { ifOpen } from '../when/if-open';
import { said } from '../when/said';

/** Hours in a cylinder are the supplier's to say, never a sum of ours. */
export const cylinderHours: Rule = {
  id: 'cylinder-hours',
  applies: (home) => {
    const unknown = 'not-known-oxygen-cylinders-second-way';
    const { facts } = home;
    return both(
      firstOf(
        said({
          facts,
          id: 'second-source',
          choices: ['cylinders'],
          because: 'oxygen-cylinders-second-way',
          unknown,
        }),
        ifOpen(facts, 'second-source', unknown),
      ),
      device(home, ['oxygen-concentrator', 'ventilator', 'other-device'], unknown),
    );
  },
};
