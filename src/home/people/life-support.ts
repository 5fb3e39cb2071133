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

/** A night's sleep, h: somebody told to be without the mask for less depends on it as on a device of life. Our judgement. */
export const NIGHT_HOURS = 8;

/** A mask for sleep that the clinician says nobody here may be without for a night. */
export const maskForLife = (facts: Facts): boolean =>
  facts.told('medical-devices') &&
  facts.has('medical-devices', 'cpap') &&
  facts.told('device-safe-hours') &&
  (facts.number('device-safe-hours') ?? NIGHT_HOURS) < NIGHT_HOURS;

/** Whether somebody's life hangs on power. Not told, or rather not said, is unknown, never "no". */
export function lifeSupport(facts: Facts): Home['lifeSupport'] {
  if (!facts.told('medical-devices') || facts.has('medical-devices', 'prefer-not-to-say')) {
    return 'unknown';
  }
  return facts.has('medical-devices', ...lifeDevices) || maskForLife(facts) ? 'yes' : 'no';
}
