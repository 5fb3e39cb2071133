import { type Rule, yes } from '../rule';

/** Lead-acid batteries give off hydrogen and hold acid. */
export const leadAcidGas: Rule = {
  id: 'lead-acid-gas',
  applies: ({ facts }) =>
    (facts.told('battery-kind') && facts.is('battery-kind', 'lead-acid')) ||
    (facts.told('sump') && facts.is('sump', 'one-with-battery'))
      ? yes('lead-acid-battery-sump')
      : null,
};
