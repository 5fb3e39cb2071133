import type { Home } from '../../home/home';
import { type Rule, type Trigger, yes } from '../rule';
import { atRisk } from '../when/at-risk';
import { firstOf } from '../when/first-of';

/** Outdoor heat, F, from which a house with no cooling can pass the 86 F line (our judgement). */
const warmOutdoorsF = 82;

/** Someone at risk from heat, where the house can get hot; and anybody where heat waves were named. */
export const heatRoom: Rule = {
  id: 'heat-room',
  applies: (home) =>
    home.site.hotF >= warmOutdoorsF ? firstOf(atRisk(home, 'heat'), heatWaves(home)) : null,
};

function heatWaves({ facts }: Home): Trigger | null {
  const named = facts.told('hazards') && facts.has('hazards', 'heat-wave');
  return named ? yes('named-heat-waves') : null;
}
