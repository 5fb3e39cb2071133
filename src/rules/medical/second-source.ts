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
        'We do not know of a second way to keep the device going.',
        firstOpen(facts, 'medical-devices', 'second-source'),
      );
    }
    return facts.has('second-source', 'none')
      ? yes('There is no second way to keep the device going.')
      : null;
  },
};
