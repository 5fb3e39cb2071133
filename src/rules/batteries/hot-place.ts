import type { ChoiceId } from '#compiled/question-ids.js';
import { toldHot } from '../../home/battery-place';
import type { Home } from '../../home/home';
import { type Rule, type Trigger, yes } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';

/** Outdoor heat, F, from which a closed garage or shed can pass 113 F (our judgement). */
const hotOutdoorsF = 90;
const hotPlaces: readonly ChoiceId<'battery-place'>[] = [
  'attached-garage',
  'detached',
  'outside-wall',
  'shed-unheated',
];

/** As told of the place; else by the weather outdoors. */
function hotThere({ facts, site }: Home): Trigger | null {
  const told = toldHot(facts);
  if (told === true) return yes('place-battery-rises-above');
  const hot = site.hotF >= hotOutdoorsF && facts.is('battery-place', ...hotPlaces);
  return told === null && hot ? yes({ code: 'hot-outdoors', hotF: Math.round(site.hotF) }) : null;
}

/** A place so hot that the battery slows or wears out. */
export const hotPlace: Rule = {
  id: 'hot-place',
  applies: (home, routes) => both(hotThere(home), fixedBattery(home, routes)),
};
