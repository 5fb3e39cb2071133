import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { knownEngine } from '../when/known-engine';

/** Height, ft, from which the loss of power is worth saying (our judgement). */
const highFt = 3000;

/** Thin air makes an engine weaker. */
export const altitude: Rule = {
  id: 'altitude',
  applies: (home, routes) => {
    const { value } = home.site.elevationFt;
    const high = value >= highFt ? yes(`Your home lies at about ${Math.round(value)} ft.`) : null;
    return both(high, knownEngine(home, routes));
  },
};
