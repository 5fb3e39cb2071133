import type { Rule } from '../rule';
import { both } from '../when/both';
import { ifOpen } from '../when/if-open';
import { wiredRoute } from '../when/wired-route';

/** An old house, or one of unknown age, whose wiring nobody has looked at. */
export const oldWiringUnknown: Rule = {
  id: 'old-wiring-unknown',
  applies: ({ facts }, routes) =>
    both(ifOpen(facts, 'wiring-signs', 'not-known-wiring-house'), wiredRoute(routes)),
};
