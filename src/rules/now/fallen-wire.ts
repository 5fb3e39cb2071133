import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';

/** A wire is down, or the storms that bring wires down are what this home worries about. */
export const fallenWire: Rule = {
  id: 'fallen-wire',
  applies: ({ facts }) =>
    firstOf(
      said({
        facts,
        id: 'now-danger',
        choices: ['fallen-wire'],
        because: 'You told us of a fallen wire.',
        unknown: 'We do not know whether a wire is down.',
      }),
      said({
        facts,
        id: 'hazards',
        choices: ['ice-snow', 'hurricane', 'wildfire', 'earthquake'],
        because: 'The storms, fires or quakes you named bring wires down.',
        unknown: 'We do not know which storms reach you.',
      }),
    ),
};
