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
        because: 'The panel, a switch or an outlet shows heat, buzzing, burns or rust.',
        unknown: 'We do not know whether the panel shows heat, buzzing or burns.',
      }),
      said({
        facts,
        id: 'now-danger',
        choices: ['hot-panel'],
        because: 'You told us something electric is hot or buzzing.',
        unknown: 'We do not know whether something electric is hot or buzzing.',
      }),
    ),
};
