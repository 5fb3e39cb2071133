import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** A single-speed compressor trips an inverter when it starts. */
export const coolingStart: Rule = {
  id: 'cooling-start',
  applies: ({ facts }, kinds) => {
    const air = facts.is('cool-main', 'central') && !facts.is('cool-kind', 'variable');
    const pump = facts.is('heat-main', 'heat-pump') && !facts.is('heat-pump-kind', 'variable');
    return both(
      air || pump ? yes('Central cooling or a heat pump here is taken to start hard.') : null,
      wiredRoute(kinds),
    );
  },
};
