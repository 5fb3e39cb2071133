import type { Home } from '../../home/home';
import { type Rule, type Trigger, yes } from '../rule';

/** Outdoor cold, F, below which a home without heat gets uncomfortable within a day or two (our judgement). */
const COOL_OUTDOORS_F = 45;

/** Heat that the plan does not keep on, and that nothing else replaces, where winter is cold. */
export const heatOff: Rule = {
  id: 'heat-off',
  applies: (home) => (home.site.coldF < COOL_OUTDOORS_F && !warmOtherwise(home) ? off(home) : null),
};

function off({ facts }: Home): Trigger | null {
  if (facts.is('heat-main', 'building')) {
    return yes('The building heats your home, and its boiler and pumps need power too.');
  }
  const electric = facts.is('heat-main', 'baseboard', 'electric-furnace', 'heat-pump');
  return electric && !facts.has('must-run', 'heat')
    ? yes('Your heat is electric, and it is not on the list of what must run.')
    : null;
}

/** A stove or heater that needs no power and has a way out for its smoke. */
function warmOtherwise({ facts }: Home): boolean {
  return facts.told('heat-second') && facts.is('heat-second', 'wood-stove', 'vented-gas');
}
