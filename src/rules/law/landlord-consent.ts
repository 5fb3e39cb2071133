import type { Rule } from '../rule';
import { said } from '../when/said';

/** A rented home: the owner's consent in writing first. */
export const landlordConsent: Rule = {
  id: 'landlord-consent',
  applies: ({ facts }) =>
    facts.has('permissions', 'landlord-ok')
      ? null
      : said({
          facts,
          id: 'home-tenure',
          choices: ['rent'],
          because: 'rent-landlord-not-agreed',
          unknown: 'not-known-own-home',
        }),
};
