import { type Rule, yes } from '../rule';
import { firstOf } from '../when/first-of';
import { selfStartingPump } from '../when/self-starting-pump';
import { wiredRoute } from '../when/wired-route';

/** When the power returns, big things go back one at a time. */
export const powerReturns: Rule = {
  id: 'power-returns',
  applies: ({ facts }, routes) =>
    firstOf(
      wiredRoute(routes),
      selfStartingPump(facts),
      facts.told('big-loads') && !facts.has('big-loads', 'none')
        ? yes('big-machines-start-together')
        : null,
    ),
};
