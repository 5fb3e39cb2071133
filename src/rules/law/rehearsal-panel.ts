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
          because: 'The panel shows signs of trouble.',
          unknown: 'We do not know whether the panel is sound.',
        }),
        said({
          facts,
          id: 'panel-kind',
          choices: ['fuses', 'split-bus', 'no-main'],
          because: 'The panel is of an old or unusual kind.',
          unknown: 'We do not know what kind of panel it is.',
        }),
      ),
      wiredRoute(routes),
    ),
};
