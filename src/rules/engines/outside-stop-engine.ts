import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { routeIn } from '../when/route-in';

/** A fixed engine needs a stop that is reached from outdoors. */
export const outsideStopEngine: Rule = {
  id: 'outside-stop-engine',
  applies: ({ facts }, kinds) =>
    firstOf(
      facts.has('own-sources', 'engine-standby') ? yes('You have a standby engine.') : null,
      routeIn(kinds, ['standby-engine'], 'A standby engine is in your plan.'),
    ),
};
