import { type Rule, yes } from '../rule';

/** Knob-and-tube wiring. */
export const knobAndTube: Rule = {
  id: 'knob-and-tube',
  applies: ({ facts }) =>
    facts.told('wiring-signs') && facts.has('wiring-signs', 'knob-tube')
      ? yes('seen-wires-white-knobs')
      : null,
};
