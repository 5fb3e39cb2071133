import { type Rule, yes } from '../rule';

/** The plan names health devices. */
export const planIsPrivate: Rule = {
  id: 'plan-is-private',
  applies: ({ facts }) =>
    facts.told('medical-devices') && !facts.has('medical-devices', 'none', 'prefer-not-to-say')
      ? yes('plan-names-health-devices')
      : null,
};
