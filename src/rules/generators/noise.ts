import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { knownGenerator } from '../when/known-generator';

/** Neighbors and rules about noise. */
export const noise: Rule = {
  id: 'noise',
  applies: (home, routes) => {
    const { facts } = home;
    const close =
      (facts.told('home-kind') && facts.is('home-kind', 'townhouse', 'manufactured')) ||
      (facts.told('home-tenure') && facts.is('home-tenure', 'association'));
    return both(close ? yes('neighbors-near-enough-hear') : null, knownGenerator(home, routes));
  },
};
