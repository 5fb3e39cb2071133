import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';

/** A cold home where people reach for candles and plug-in heaters. */
export const candlesHeaters: Rule = {
  id: 'candles-heaters',
  applies: ({ facts }) =>
    firstOf(
      facts.told('outage-failed') && facts.has('outage-failed', 'cold')
        ? yes('home-got-cold-outage')
        : null,
      facts.told('heat-main') && facts.is('heat-main', 'baseboard', 'electric-furnace', 'none')
        ? yes('heat-electric-none')
        : null,
    ),
};
