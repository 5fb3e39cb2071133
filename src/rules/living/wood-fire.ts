import { type Rule, yes } from '../rule';

/** Wood, pellets or vented gas as heat. */
export const woodFire: Rule = {
  id: 'wood-fire',
  applies: ({ facts }) =>
    (facts.told('heat-second') && facts.is('heat-second', 'wood-stove')) ||
    (facts.told('heat-main') && facts.is('heat-main', 'wood'))
      ? yes('heat-wood')
      : null,
};
