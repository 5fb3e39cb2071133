import { careful, type Rule } from '../rule';
import { firstOpen } from '../when/first-open';
import { lifeDevice } from '../when/life-device';

/** Nobody but the clinician can say how long someone is safe without the device. */
export const safeHours: Rule = {
  id: 'safe-hours',
  applies: (home) =>
    lifeDevice(home) !== null && !home.facts.told('device-safe-hours')
      ? careful(
          'not-known-long-safe-without-device',
          firstOpen(home.facts, 'medical-devices', 'device-safe-hours'),
        )
      : null,
};
