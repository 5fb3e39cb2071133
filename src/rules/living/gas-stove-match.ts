import { type Rule, yes } from '../rule';

/** A gas stove lit with a match, to cook and never to heat. */
export const gasStoveMatch: Rule = {
  id: 'gas-stove-match',
  applies: ({ facts }) =>
    facts.told('cook-without') && facts.has('cook-without', 'gas-match')
      ? yes('light-gas-stove-match')
      : null,
};
