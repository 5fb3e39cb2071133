import type { Tariff } from '../bill/tariff';
import type { Later } from '../faces/door';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/question';
import type { Unfinished } from '../interview/unfinished';
import { weigher } from '../plan/weigh';
import { removeHome, saveHome } from '../store/write-home';

/**
 * Saving and weighing, for a face. Nothing is saved before the home has a name; when the name is changed, the file
 * of the old one goes, since it may be the name that was to be taken back.
 */
export function makeLater(
  fileOf: () => string | null,
  sitting: {
    asOf: string;
    answers: Answers;
    unfinished: Unfinished;
    readonly tariff: Tariff | null;
  },
  interview: Interview,
): Later {
  let last: string | null = null;
  return {
    weigh: weigher(interview, sitting.tariff),
    save: (answers, unfinished) => {
      sitting.answers = answers;
      sitting.unfinished = unfinished;
      const file = fileOf();
      if (file === null) return null;
      const problem = saveHome(file, interview, sitting);
      if (problem !== null) return problem;
      const left = last !== null && last !== file ? removeHome(last) : null;
      last = file;
      return left;
    },
  };
}
