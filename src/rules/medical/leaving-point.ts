import type { Rule } from '../rule';
import { lifeDevice } from '../when/life-device';

/** When to go: three times the trip plus two hours, on what can be carried. */
export const leavingPoint: Rule = {
  id: 'leaving-point',
  applies: (home) => {
    const life = lifeDevice(home);
    const tripHours = home.facts.number('trip-hours');
    if (life === null || tripHours === null) return life;
    const leaveHours = Math.round((3 * tripHours + 2) * 10) / 10;
    return {
      because: `${life.because} With a trip of ${tripHours} h, leave with ${leaveHours} h in hand.`,
      careful: life.careful || !home.facts.told('trip-hours'),
      asks: life.careful ? life.asks : 'trip-hours',
    };
  },
};
