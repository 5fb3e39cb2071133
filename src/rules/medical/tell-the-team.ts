import type { ChoiceId } from '#compiled/question-ids.js';
import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOpen } from '../when/first-open';
import { lifeDevice } from '../when/life-device';

const everybody: readonly ChoiceId<'device-team'>[] = [
  'clinician',
  'supplier',
  'power-company',
  'fire-department',
];

/** Clinician, supplier, power company and fire department should all know. */
export const tellTheTeam: Rule = {
  id: 'tell-the-team',
  applies: (home) => {
    const { facts } = home;
    const missing = everybody.filter((one) => !facts.has('device-team', one));
    if (facts.told('device-team') && missing.length === 0) return null;
    const gap = facts.told('device-team')
      ? yes({ code: 'team-not-told', missing })
      : careful('not-known-told-about-device', firstOpen(facts, 'medical-devices', 'device-team'));
    return both(gap, lifeDevice(home));
  },
};
