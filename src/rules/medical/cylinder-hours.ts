import { type Rule, yes } from '../rule';

/** Hours in a cylinder are the supplier's to say, never a sum of ours. */
export const cylinderHours: Rule = {
  id: 'cylinder-hours',
  applies: ({ facts }) =>
    facts.told('second-source') && facts.has('second-source', 'cylinders')
      ? yes('Oxygen cylinders are the second way.')
      : null,
};
