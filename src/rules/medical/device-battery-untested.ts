import { careful, type Rule, yes } from '../rule';
import { firstOpen } from '../when/first-open';
import { lifeDevice } from '../when/life-device';

/** A device's own battery counts half until it has been tested. */
export const deviceBatteryUntested: Rule = {
  id: 'device-battery-untested',
  applies: (home) => {
    const { facts } = home;
    const hours = facts.number('device-battery-hours') ?? 0;
    if (facts.told('device-battery-hours') && hours > 0) {
      if (facts.told('device-battery-tested') && facts.is('device-battery-tested', 'yes'))
        return null;
      return yes('battery-device-not-tested');
    }
    const life = lifeDevice(home);
    return life !== null && !facts.told('device-battery-hours')
      ? careful(
          'not-known-battery-device',
          firstOpen(facts, 'medical-devices', 'device-battery-hours'),
        )
      : null;
  },
};
