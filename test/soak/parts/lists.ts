import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { beatenOn, caseOf, everything, falseReasons, leastMissed } from '../../advice/list-case';
import { randomHome } from '../../random-home';
import { note, type Part } from '../part';

/** What each dollar buys, for homes made up by chance: nothing on the list is beaten by any size of any route. */
export const lists: Part = {
  whole: 300,
  of: 'list',
  try(seed, tally) {
    const one = caseOf(homeFromAnswers(interview, randomHome(seed), '2026-11-25'));
    const others = everything(one);
    note(tally, `list ${seed}`, 'nothing beats a line', beatenOn(one, others));
    note(tally, `list ${seed}`, 'the least that is enough is on it', leastMissed(one, others));
    note(tally, `list ${seed}`, 'it costs least where that is said', falseReasons(one, others));
  },
};
