import { type Rule, yes } from '../rule';

/** Aluminum branch wiring. */
export const aluminumWiring: Rule = {
  id: 'aluminum-wiring',
  applies: ({ facts }) =>
    facts.told('wiring-signs') && facts.has('wiring-signs', 'aluminum')
      ? yes('seen-aluminum-wires')
      : null,
};
