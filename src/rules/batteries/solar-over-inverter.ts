import { type Rule, yes } from '../rule';

/** Solar stronger than the battery it must feed when the grid is gone. */
export const solarOverInverter: Rule = {
  id: 'solar-over-inverter',
  applies: ({ facts }) => {
    if (!facts.has('own-sources', 'solar') || !facts.has('own-sources', 'home-battery'))
      return null;
    const solarKw = facts.number('solar-kw');
    const batteryKw = facts.number('battery-kw');
    return solarKw !== null && batteryKw !== null && solarKw > batteryKw
      ? yes({ code: 'solar-over-battery', solarKw, batteryKw })
      : null;
  },
};
