import type { ChoiceId } from '#compiled/question-ids.js';
import { careful, type Rule, yes } from '../rule';
import { anyGenerator } from '../when/any-generator';
import { firstOf } from '../when/first-of';

const burners: readonly ChoiceId<'heat-second'>[] = [
  'wood-stove',
  'vented-gas',
  'unvented',
  'oven-or-grill',
];

/** Alarms before any generator; and wherever alarms are missing or unknown. */
export const coAlarmFirst: Rule = {
  id: 'co-alarm-first',
  applies: (home, routes) => {
    const { facts } = home;
    const lacking = facts.told('co-alarm') && !facts.is('co-alarm', 'every-floor');
    const burning = facts.is('heat-second', ...burners) && !facts.is('co-alarm', 'every-floor');
    return firstOf(
      anyGenerator(home, routes),
      lacking ? yes('there-no-carbon-monoxide') : null,
      burning ? yes('heat-fire-alarms-not') : null,
      facts.open('co-alarm') ? careful('not-known-alarms', 'co-alarm') : null,
    );
  },
};
