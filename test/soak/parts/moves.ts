import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { caseOf } from '../../advice/list-case';
import { asGoalGrows, asMoneyGrows, asThingsGo } from '../../advice/moves';
import { randomHome } from '../../random-home';
import { met, note, type Part } from '../part';

/** How the advice moves as money, goal and things do, for homes made up by chance. */
export const moves: Part = {
  whole: 300,
  of: 'home',
  try(seed, tally) {
    const answers = randomHome(seed);
    const one = caseOf(homeFromAnswers(interview, answers, '2026-11-25'));
    const moved = {
      'more money is never worse': asMoneyGrows(answers, one),
      'a longer goal never costs less': asGoalGrows(one),
      'one thing less never costs more': asThingsGo(one),
    };
    for (const [what, { compared, wrong }] of Object.entries(moved)) {
      met(tally, `${what}, pairs`, compared);
      note(tally, `home ${seed}`, what, wrong);
    }
  },
};
