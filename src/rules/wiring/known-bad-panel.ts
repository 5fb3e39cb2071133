import { type Rule, yes } from '../rule';

/** A make of panel whose breakers are known not to trip. */
export const knownBadPanel: Rule = {
  id: 'known-bad-panel',
  applies: ({ facts }) =>
    facts.told('panel-signs') && facts.has('panel-signs', 'known-bad-make')
      ? yes('professional-said-make-panel')
      : null,
};
