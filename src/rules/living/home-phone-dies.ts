import { type Rule, yes } from '../rule';

/** A home phone that may run through a box that needs power. */
export const homePhoneDies: Rule = {
  id: 'home-phone-dies',
  applies: ({ facts }) =>
    facts.told('phone-works') && facts.is('phone-works', 'landline')
      ? yes('count-home-phone')
      : null,
};
