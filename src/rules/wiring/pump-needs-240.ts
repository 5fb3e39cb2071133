import { outletsOnly } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** A 240 V pump and a source of 120 V. */
export const pumpNeeds240: Rule = {
  id: 'pump-needs-240',
  applies: ({ facts }, routes) =>
    both(
      facts.is('well-volts', 'v240') ? yes('pump-taken-need-240') : null,
      firstOf(
        facts.is('engine-volts', 'v120') ? yes('generator-taken-give-120') : null,
        routeWith(routes, outletsOnly, 'source-120-volts-plan'),
      ),
    ),
};
