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
          because: 'You rent, and the landlord has not agreed.',
          unknown: 'We do not know whether you own the home.',
        }),
};
