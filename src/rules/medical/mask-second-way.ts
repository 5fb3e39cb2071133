import type { Rule } from '../rule';
import { both } from '../when/both';
import { device } from '../when/device';
import { said } from '../when/said';

/** A mask for sleep with no second way: nobody dies in the gap, so the plan may stand, but the next night needs a bed. */
export const maskSecondWay: Rule = {
  id: 'mask-second-way',
  applies: (home) => {
    const { facts } = home;
    if (home.lifeSupport !== 'no') return null;
    const none = said({
      facts,
      id: 'second-source',
      choices: ['none'],
      because: 'there-no-second-way',
      unknown: 'not-known-second-way-keep-device',
    });
    return both(none, device(home, ['cpap'], 'someone-sleeps-breathing-mask'));
  },
};
