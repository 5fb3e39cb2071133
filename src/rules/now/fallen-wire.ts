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
        because: 'told-fallen-wire',
        unknown: 'not-known-wire-down',
      }),
      said({
        facts,
        id: 'hazards',
        choices: ['ice-snow', 'hurricane', 'wildfire', 'earthquake'],
        because: 'storms-fires-quakes-named',
        unknown: 'not-known-storms-reach',
      }),
    ),
};
