import { careful, type Rule, yes } from '../rule';
import { firstOpen } from '../when/first-open';
import { lifeDevice } from '../when/life-device';

/** A life device with no second way is a plan not finished. */
export const secondSource: Rule = {
  id: 'second-source',
  applies: (home) => {
    const life = lifeDevice(home);
    const { facts } = home;
    if (life === null) return null;
    if (!facts.told('second-source')) {
      return careful(
        'not-known-second-way-keep-device',
        firstOpen(facts, 'medical-devices', 'second-source'),
      );
    }
    return facts.has('second-source', 'none') ? yes('there-no-second-way') : null;
  },
};
