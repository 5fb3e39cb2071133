import { type Rule, yes } from '../rule';

/** Sleeping without the mask for some nights: ask first, and turn its heater off. */
export const cpapNights: Rule = {
  id: 'cpap-nights',
  applies: ({ facts }) =>
    facts.told('medical-devices') && facts.has('medical-devices', 'cpap')
      ? yes('someone-sleeps-breathing-mask')
      : null,
};
