import { leaveAt } from '../../home/people/leave-at';
import { sourceOfAnswer } from '../../home/sources';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, operand, timesFigure } from '../../quantity/figure-arithmetic';
import type { Plan } from '../plan';

const H = { unit: 'h' } as const;

/** Hours a device must still be carried for when its person leaves; null where no life or health hangs on one. */
export function leaveHours({ home: { facts }, lifeFirst, healthFirst }: Plan): Figure | null {
  if (lifeFirst === null && healthFirst === null) return null;
  const { tripHours, tripTold, roads, hours, times, spareHours, roadHours } = leaveAt(facts);
  return figure({
    value: hours,
    ...H,
    source: { kind: 'formula' },
    as: () => {
      const told = tripTold ? sourceOfAnswer(facts, 'trip-hours') : { kind: 'assumed' as const };
      const trip = operand(tripHours, 'h', tripTold ? 'trip' : 'trip-not-known', told);
      const trips = timesFigure(trip, operand(times, 'count', 'times-the-trip'), {
        ...H,
        is: 'trip-and-back',
      });
      const road = operand(roadHours, 'h', roads === 'one' ? 'one-road' : 'roads-not-known');
      const more = roads === 'more' ? [] : [road];
      return addFigures([trips, operand(spareHours, 'h', 'hours-in-hand'), ...more], H);
    },
  });
}
