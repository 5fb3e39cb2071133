import type { Facts } from '../../home/facts';
import type { RouteKind } from '../../home/route-kind';
import type { Rule, Trigger } from '../rule';
import { both } from '../when/both';
import { routeIn } from '../when/route-in';
import { said } from '../when/said';

/** A bonded engine with protected outlets trips when it is tied to the house. */
export const gfciTrips: Rule = {
  id: 'gfci-trips',
  applies: ({ facts }, kinds) => {
    const inlet = routeIn(kinds, ['engine-inlet'], 'An engine would feed the house by an inlet.');
    return facts.applies('engine-neutral') ? ownEngine(facts, kinds, inlet) : inlet;
  },
};

function ownEngine(
  facts: Facts,
  kinds: ReadonlySet<RouteKind>,
  inlet: Trigger | null,
): Trigger | null {
  const bonded = said({
    facts,
    id: 'engine-neutral',
    choices: ['bonded', 'switchable'],
    because: 'The neutral of your engine is bonded, or can be.',
    unknown: 'We do not know how the neutral of your engine is set.',
  });
  const joined = facts.is('engine-connect', 'inlet') || kinds.has('engine-inlet');
  return joined ? both(bonded, inlet ?? bonded) : null;
}
