import type { Rule } from '../rule';
import { device } from '../when/device';

/** A hand breathing bag at the bed, and two people who can use it. */
export const ventilatorBag: Rule = {
  id: 'ventilator-bag',
  applies: (home) => device(home, ['ventilator'], 'someone-uses-ventilator'),
};
