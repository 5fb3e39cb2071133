import type { Rule } from '../rule';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';

/** The panel is hot, buzzes or shows burns: nothing else is wired before an electrician has looked. */
export const hotPanel: Rule = {
  id: 'hot-panel',
  applies: ({ facts }) =>
    firstOf(
      said({
        facts,
        id: 'panel-signs',
        choices: ['heat-or-buzz', 'burn-or-rust'],
        because: 'panel-switch-outlet-shows',
        unknown: 'not-known-panel-shows-heat-buzzing',
      }),
      said({
        facts,
        id: 'now-danger',
        choices: ['hot-panel'],
        because: 'told-something-electric-hot-buzzing',
        unknown: 'not-known-something-electric-hot-buzzing',
      }),
    ),
};
