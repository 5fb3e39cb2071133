import type { Tariff } from '../bill/tariff/tariff';
import type { Later } from '../faces/door';
import type { Interview } from '../interview/question';
import { weigher } from '../plan/weigh';
import type { Keeping } from './keeping';

/** Keeping and weighing, for a face. Sums are made ready at the first weighing, so that keeping waits for nothing. */
export function makeLater(keeping: Keeping, tariff: Tariff | null, interview: Interview): Later {
  let weigh: Later['weigh'] | null = null;
  return {
    save: (answers, unfinished) => keeping.save(answers, unfinished),
    weigh: (answers) => {
      weigh ??= weigher(interview, tariff);
      return weigh(answers);
    },
  };
}
