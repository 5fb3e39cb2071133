import { type Rule, yes } from '../rule';

/** Work that hangs on the internet. */
export const internetDies: Rule = {
  id: 'internet-dies',
  applies: ({ facts }) =>
    facts.told('work-gear') && !facts.is('work-gear', 'none') && !facts.is('internet-kind', 'none')
      ? yes('work-over-internet')
      : null,
};
