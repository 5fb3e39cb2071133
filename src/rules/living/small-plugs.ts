import { type Rule, yes } from '../rule';

/** Fuel-burning things with a plug that people think will work. */
export const smallPlugs: Rule = {
  id: 'small-plugs',
  applies: ({ facts }) =>
    (facts.told('heat-main') && facts.is('heat-main', 'pellet')) ||
    (facts.told('heat-second') && facts.is('heat-second', 'vented-gas')) ||
    (facts.told('water-heater') && facts.is('water-heater', 'tankless-gas', 'gas-plug'))
      ? yes('stove-water-heater-need')
      : null,
};
