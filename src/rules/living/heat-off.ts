import { COOL_OUTDOORS_F, warmOtherwise } from '../../home/heat/warm-otherwise';
import type { Home } from '../../home/home';
import { type Rule, type Trigger, yes } from '../rule';

/** Heat that the plan does not keep on, and that nothing else replaces, where winter is cold. */
export const heatOff: Rule = {
  id: 'heat-off',
  applies: (home) =>
    home.site.coldF < COOL_OUTDOORS_F && !warmOtherwise(home.facts) ? off(home) : null,
};

function off({ facts }: Home): Trigger | null {
  if (facts.is('heat-main', 'building')) {
    return yes('building-heats-home-boiler');
  }
  const electric = facts.is('heat-main', 'baseboard', 'electric-furnace', 'heat-pump');
  return electric && !facts.has('must-run', 'heat') ? yes('heat-electric-not-list') : null;
}
