import { hasFixedGenerator } from '../../kinds/ask-traits';
import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeWith } from '../when/route-with';

/** A fixed generator needs a stop that is reached from outdoors. */
export const outsideStopGenerator: Rule = {
  id: 'outside-stop-engine',
  applies: ({ facts }, routes) =>
    firstOf(
      facts.has('own-sources', 'engine-standby') ? yes('standby-generator') : null,
      routeWith(routes, hasFixedGenerator, 'standby-generator-plan'),
    ),
};
