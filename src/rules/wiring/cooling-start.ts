import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOpen } from '../when/first-open';
import { wiredRoute } from '../when/wired-route';
import { withStarts } from '../when/with-starts';

/** A single-speed compressor trips an inverter when it starts. */
export const coolingStart: Rule = {
  id: 'cooling-start',
  applies: (home, routes) => {
    const { facts } = home;
    const air = facts.is('cool-main', 'central') && !facts.is('cool-kind', 'variable');
    const pump = facts.is('heat-main', 'heat-pump') && !facts.is('heat-pump-kind', 'variable');
    if (!air && !pump) return null;
    const told =
      (air && facts.told('cool-main') && facts.told('cool-kind')) ||
      (pump && facts.told('heat-pump-kind'));
    const start = both(
      told
        ? yes('central-cooling-heat-pump')
        : careful(
            'central-cooling-heat-pump-start',
            firstOpen(facts, 'cool-main', 'cool-kind', 'heat-pump-kind'),
          ),
      wiredRoute(routes),
    );
    return withStarts(start, home, ['central-ac', 'heat-pump']);
  },
};
