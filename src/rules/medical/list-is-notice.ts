import type { Rule } from '../rule';
import { lifeDevice } from '../when/life-device';

/** The power company's medical list brings a call, not power. */
export const listIsNotice: Rule = {
  id: 'list-is-notice',
  applies: (home) => lifeDevice(home),
};
