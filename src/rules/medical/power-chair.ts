import { type Rule, yes } from '../rule';

/** A power chair that runs flat. */
export const powerChair: Rule = {
  id: 'power-chair',
  applies: ({ facts }) =>
    facts.told('medical-devices') && facts.has('medical-devices', 'power-chair')
      ? yes('someone-uses-power-chair')
      : null,
};
