import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';
import { wiredRoute } from '../when/wired-route';

/** Whatever joins a source to the house must be listed for it and shut out both sources at once. */
export const transferListed: Rule = {
  id: 'transfer-listed',
  applies: (home, routes) =>
    firstOf(
      said({
        facts: home.facts,
        id: 'transfer-existing',
        choices: ['interlock', 'manual-switch', 'automatic', 'not-known'],
        because: 'transfer-equipment-nobody-confirmed',
        unknown: 'not-known-house-transfer-equipment',
      }),
      wiredRoute(routes),
    ),
};
