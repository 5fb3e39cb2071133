import type { ChoiceId } from '#compiled/question-ids.js';
import type { Facts } from '../facts';
import type { Home } from '../home';

/** Devices on which somebody's life may hang. */
export const lifeDevices: readonly ChoiceId<'medical-devices'>[] = [
  'oxygen-concentrator',
  'ventilator',
  'dialysis',
  'heart-pump',
  'feeding-pump',
  'suction',
  'other-device',
];

/** Whether somebody's life hangs on power. Not told, or rather not said, is unknown, never "no". */
export function lifeSupport(facts: Facts): Home['lifeSupport'] {
  if (!facts.told('medical-devices') || facts.has('medical-devices', 'prefer-not-to-say')) {
    return 'unknown';
  }
  return facts.has('medical-devices', ...lifeDevices) ? 'yes' : 'no';
}
