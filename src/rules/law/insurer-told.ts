import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { wiredRoute } from '../when/wired-route';

/** The insurer does not know of it yet. */
export const insurerTold: Rule = {
  id: 'insurer-told',
  applies: ({ facts }, routes) =>
    both(
      facts.has('permissions', 'insurer-told') ? null : yes('insurer-not-told'),
      wiredRoute(routes),
    ),
};
