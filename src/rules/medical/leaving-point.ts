import { leaveAt } from '../../home/people/leave-at';
import type { Rule } from '../rule';
import { lifeDevice } from '../when/life-device';

/** When to go: three times the trip plus two hours, more where one road leads out, on what can be carried. */
export const leavingPoint: Rule = {
  id: 'leaving-point',
  applies: (home) => {
    const life = lifeDevice(home);
    if (life === null || home.facts.number('trip-hours') === null) return life;
    const { tripHours, tripTold, hours } = leaveAt(home.facts);
    const leaveHours = Math.round(hours * 10) / 10;
    return {
      because: { code: 'leave-in-hand', life: life.because, tripHours, leaveHours },
      careful: life.careful || !tripTold,
      asks: life.careful ? life.asks : 'trip-hours',
    };
  },
};
