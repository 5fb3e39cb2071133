import { type Rule, yes } from '../rule';

/** Two-hole outlets have no ground, and three holes do not prove one. */
export const ungroundedOutlets: Rule = {
  id: 'ungrounded-outlets',
  applies: ({ facts }) =>
    facts.told('wiring-signs') && facts.has('wiring-signs', 'two-hole')
      ? yes('there-outlets-two-holes')
      : null,
};
