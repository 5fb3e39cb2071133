import { type Rule, yes } from '../rule';

/** An association with rules: its consent in writing first. */
export const associationConsent: Rule = {
  id: 'association-consent',
  applies: ({ facts }) =>
    facts.told('home-tenure') &&
    facts.is('home-tenure', 'association') &&
    !facts.has('permissions', 'association-ok')
      ? yes('association-say-not-agreed')
      : null,
};
