import type { ChoiceId } from '#compiled/question-ids.js';
import { type Rule, yes } from '../rule';
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

/** A place so hot that the battery slows or wears out. */
export const hotPlace: Rule = {
  id: 'hot-place',
  applies: (home, routes) =>
    both(
      home.site.hotF >= hotOutdoorsF && home.facts.is('battery-place', ...hotPlaces)
        ? yes(`It reaches ${Math.round(home.site.hotF)} °F outdoors where the battery would stand.`)
        : null,
      fixedBattery(home, routes),
    ),
};
