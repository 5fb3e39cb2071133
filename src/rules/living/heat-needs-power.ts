import { type Rule, yes } from '../rule';

/** A furnace, boiler or pellet stove left off the list that must keep running. */
export const heatNeedsPower: Rule = {
  id: 'heat-needs-power',
  applies: ({ facts }) =>
    facts.told('heat-main') &&
    facts.is('heat-main', 'gas-furnace', 'oil-furnace', 'boiler', 'pellet') &&
    !facts.has('must-run', 'heat')
      ? yes('heat-burns-fuel-did')
      : null,
};
