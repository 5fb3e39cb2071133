import type { Rule } from '../rule';
import { atRisk } from '../when/at-risk';

/** Outdoor cold, F, below which an unheated house falls to the 60-65 F line (our judgement). */
const coolOutdoorsF = 55;

/** Someone at risk from cold, where the house can cool down. */
export const coldRoom: Rule = {
  id: 'cold-room',
  applies: (home) => (home.site.coldF < coolOutdoorsF ? atRisk(home, 'cold') : null),
};
