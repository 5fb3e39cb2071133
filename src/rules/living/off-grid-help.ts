import { type Rule, yes } from '../rule';

/** No power company: nobody brings the power back but you. */
export const offGridHelp: Rule = {
  id: 'off-grid-help',
  applies: ({ facts }) =>
    facts.told('home-kind') && facts.is('home-kind', 'off-grid')
      ? yes('home-no-power-company')
      : null,
};
