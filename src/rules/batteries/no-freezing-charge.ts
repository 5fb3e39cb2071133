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
    if (toldToFreeze(facts)) return yes('The place for the battery falls below freezing.');
    if (site.coldF > 32) return null;
    if (facts.open('battery-place')) {
      return careful(
        'It freezes where you live, and we do not know where the battery would stand.',
        'battery-place',
      );
    }
    return facts.is('battery-place', ...coldPlaces)
      ? yes('It freezes where you live, and the battery place is not heated.')
      : null;
  },
};
