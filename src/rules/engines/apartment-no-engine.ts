import { type Rule, yes } from '../rule';

/** No engine in, on or beside an apartment building of other people. */
export const apartmentNoEngine: Rule = {
  id: 'apartment-no-engine',
  applies: ({ facts }) =>
    facts.told('home-kind') && facts.is('home-kind', 'apartment')
      ? yes('You live in an apartment.')
      : null,
};
