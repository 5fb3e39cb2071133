import { type Rule, yes } from '../rule';

/** A panel that trips or has open covers is put right before anything is added. */
export const panelDamage: Rule = {
  id: 'panel-damage',
  applies: ({ facts }) =>
    facts.told('panel-signs') && facts.has('panel-signs', 'trips', 'covers-missing')
      ? yes('breaker-trips-cover-missing')
      : null,
};
