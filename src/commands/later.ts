import type { Later } from '../faces/door';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/question';
import type { Unfinished } from '../interview/unfinished';
import { weigher } from '../plan/weigh';
import { saveHome } from '../store/write-home';

/** Saving and weighing, for a face. Nothing is saved before the home has a name. */
export function makeLater(
  fileOf: () => string | null,
  sitting: { asOf: string; answers: Answers; unfinished: Unfinished },
  interview: Interview,
): Later {
  return {
    weigh: weigher(interview),
    save: (answers, unfinished) => {
      sitting.answers = answers;
      sitting.unfinished = unfinished;
      const file = fileOf();
      return file === null ? null : saveHome(file, interview, sitting);
    },
  };
}
