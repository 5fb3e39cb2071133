import type { ChoiceId } from '#compiled/question-ids.js';
import { toldToFreeze } from '../../home/battery-place';
import { hasFixedBattery } from '../../kinds/ask-traits';
import { careful, type Rule, yes } from '../rule';

/** Places that follow the weather outdoors. */
const coldPlaces: readonly ChoiceId<'battery-place'>[] = [
  'shed-unheated',
  'detached',
  'outside-wall',
  'attached-garage',
];

/** A lithium battery, or one of unknown kind, that would have to take charge where it freezes. */
export const noFreezingCharge: Rule = {
  id: 'no-freezing-charge',
  applies: ({ facts, site }, routes) => {
    const brings = routes.some(hasFixedBattery);
    const leadOnly = facts.told('battery-kind') && facts.is('battery-kind', 'lead-acid');
    const owned = facts.has('own-sources', 'home-battery', 'power-pack') && !leadOnly;
    if (!brings && !owned) return null;
    if (toldToFreeze(facts)) return yes('place-battery-falls-below');
    if (site.coldF > 32) return null;
    if (facts.open('battery-place')) {
      return careful('freezes-where-live-we', 'battery-place');
    }
    return facts.is('battery-place', ...coldPlaces) ? yes('freezes-where-live-battery') : null;
  },
};
