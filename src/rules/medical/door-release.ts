import { type Rule, yes } from '../rule';

/** A garage door or gate that will not open without power. */
export const doorRelease: Rule = {
  id: 'door-release',
  applies: ({ facts }) =>
    facts.told('access-lifts') && facts.has('access-lifts', 'garage-door', 'power-gate')
      ? yes('powered-door-gate-way')
      : null,
};
