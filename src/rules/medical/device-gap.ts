import { isSource } from '../../kinds/ask-traits';
import { careful, type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOpen } from '../when/first-open';
import { lifeDevice } from '../when/life-device';
import { routeWith } from '../when/route-with';

/** A device with no battery of its own stops in the gap before the backup takes over. */
export const deviceGap: Rule = {
  id: 'device-gap',
  applies: (home, routes) => {
    const { facts } = home;
    const ownHours = facts.number('device-battery-hours') ?? 0;
    if (facts.told('device-battery-hours') && ownHours > 0) return null;
    const battery = facts.told('device-battery-hours')
      ? yes('device-no-battery-own')
      : careful(
          'not-known-device-battery-own',
          firstOpen(facts, 'medical-devices', 'device-battery-hours'),
        );
    const route = routeWith(routes, isSource, 'source-takes-over-after');
    return both(battery, both(lifeDevice(home), route));
  },
};
