import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { knownGenerator } from '../when/known-generator';

/** Height, ft, from which the loss of power is worth saying (our judgement). */
const highFt = 3000;

/** Thin air makes a generator weaker. */
export const altitude: Rule = {
  id: 'altitude',
  applies: (home, routes) => {
    const { value } = home.site.elevationFt;
    const high = value >= highFt ? yes({ code: 'home-lies-high', feet: Math.round(value) }) : null;
    return both(high, knownGenerator(home, routes));
  },
};
