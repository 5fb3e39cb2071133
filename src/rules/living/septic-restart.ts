import { type Rule, yes } from '../rule';

/** A sewage pump that stands still fills its tank. */
export const septicRestart: Rule = {
  id: 'septic-restart',
  applies: ({ facts }) =>
    facts.is('waste', 'septic-pump', 'grinder') ? yes('waste-water-pumped') : null,
};
