import { type Rule, yes } from '../rule';
import { device } from '../when/device';
import { firstOf } from '../when/first-of';

/** Oxygen feeds fire: concentrator or cylinders. */
export const oxygenFire: Rule = {
  id: 'oxygen-fire',
  applies: (home) =>
    firstOf(
      home.facts.has('second-source', 'cylinders') ? yes('oxygen-cylinders-kept') : null,
      device(home, ['oxygen-concentrator'], 'someone-uses-oxygen'),
    ),
};
