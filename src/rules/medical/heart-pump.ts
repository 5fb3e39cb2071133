import type { Rule } from '../rule';
import { device } from '../when/device';

/** A heart pump follows its own team's power plan and nobody else's. */
export const heartPump: Rule = {
  id: 'heart-pump',
  applies: (home) => device(home, ['heart-pump'], 'someone-heart-pump'),
};
