import type { Rule } from '../rule';
import { atRisk } from '../when/at-risk';

/** Outdoor heat, F, from which a house with no cooling can pass the 86 F line (our judgement). */
const warmOutdoorsF = 82;

/** Someone at risk from heat, where the house can get hot. */
export const heatRoom: Rule = {
  id: 'heat-room',
  applies: (home) => (home.site.hotF >= warmOutdoorsF ? atRisk(home, 'heat') : null),
};
