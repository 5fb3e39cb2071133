import { type Rule, yes } from '../rule';

/** 120/208 V buildings. */
export const supply208: Rule = {
  id: 'supply-208',
  applies: ({ facts }) =>
    facts.told('supply-volts') && facts.is('supply-volts', 'v120-208')
      ? yes('Your building has 120/208 volts.')
      : null,
};
