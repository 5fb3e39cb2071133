import { type Rule, yes } from '../rule';

/** Someone is often alone. */
export const aloneCheck: Rule = {
  id: 'alone-check',
  applies: ({ facts }) =>
    facts.told('people-risk') && facts.has('people-risk', 'alone-often')
      ? yes('someone-often-alone')
      : null,
};
