import type { ChoiceId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import type { Reason } from '../reason';
import { careful, type Trigger, yes } from '../rule';

/** One of these health devices is named. Not known, or kept private: careful. */
export function device(
  home: Home,
  ids: readonly ChoiceId<'medical-devices'>[],
  because: Reason,
): Trigger | null {
  const { facts } = home;
  if (facts.told('medical-devices') && facts.has('medical-devices', ...ids)) return yes(because);
  if (facts.open('medical-devices') || facts.has('medical-devices', 'prefer-not-to-say')) {
    return careful('not-known-health-devices-used', 'medical-devices');
  }
  return null;
}
