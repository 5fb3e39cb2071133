import type { Tariff } from '../bill/tariff';
import type { Later } from '../faces/door';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/question';
import { weigher } from '../plan/weigh';
import { saveHome } from '../store/write-home';

/** Saving and weighing, for a face. Nothing is saved before the home has a name. */
export function makeLater(
  fileOf: () => string | null,
  sitting: { asOf: string; answers: Answers; readonly tariff: Tariff | null },
  interview: Interview,
): Later {
  return {
    weigh: weigher(interview, sitting.tariff),
    save: (answers) => {
      sitting.answers = answers;
      const file = fileOf();
      return file === null
        ? null
        : saveHome(file, interview, answers, sitting.asOf, sitting.tariff);
    },
  };
}
