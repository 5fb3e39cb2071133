import type { BillCheck, Season } from '../../../home/home';
import { sayBillCheck } from '../bill/say-bill-check';

/** The table of what must keep running. */
export const loads = {
  title: 'What must keep running',
  none: 'Nothing was named.',
  columns: (season: Season) => ['Load', 'While it runs', 'When it starts', `A hard ${season} day`],
  noMotor: 'no motor',
  billCheck(check: BillCheck): string {
    if (check.verdict === 'not-possible')
      return `Check against the bill: not possible, because ${sayBillCheck(check)}.`;
    const day = check.season === 'mild' ? 'a usual day' : `a usual ${check.season} day`;
    return `Check against the bill, with everything named in the home on ${day}, not only what must run on a hard one: ${sayBillCheck(check)}`;
  },
};
