import type { Rule } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';
import { wiredRoute } from '../when/wired-route';

/** No rehearsal with a panel that is suspect. */
export const rehearsalPanel: Rule = {
  id: 'rehearsal-panel',
  applies: ({ facts }, routes) =>
    both(
      firstOf(
        said({
          facts,
          id: 'panel-signs',
          choices: ['heat-or-buzz', 'burn-or-rust', 'trips', 'covers-missing', 'known-bad-make'],
          because: 'panel-shows-signs-trouble',
          unknown: 'not-known-panel-sound',
        }),
        said({
          facts,
          id: 'panel-kind',
          choices: ['fuses', 'split-bus', 'no-main'],
          because: 'panel-old-unusual-kind',
          unknown: 'not-known-kind-panel',
        }),
      ),
      wiredRoute(routes),
    ),
};
