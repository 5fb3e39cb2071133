import type { Facts } from '../facts';

/** A trip that is not known, h. Our judgement. */
const UNKNOWN_TRIP_HOURS = 3;
/** Time for a closed road to be opened, where no other leads out, h. Our judgement. */
const ONE_ROAD_HOURS = 4;
/** So many times the trip, for storms slow it, and hours to pack and set out. Our judgement. */
const TIMES_THE_TRIP = 3;
const SPARE_HOURS = 2;

/** What must still be carried for a device when leaving, and what it comes from; h. */
export interface LeaveAt {
  readonly tripHours: number;
  readonly tripTold: boolean;
  readonly roads: 'more' | 'one' | 'not-known';
  readonly hours: number;
  /** What they are made of: so many times the trip, hours in hand, and hours for a closed road. */
  readonly times: number;
  readonly spareHours: number;
  readonly roadHours: number;
}

/** Three times the trip plus two hours, and more where one road leads out or nobody knows of a second. Our judgement. */
export function leaveAt(facts: Facts): LeaveAt {
  const tripTold = facts.told('trip-hours');
  const tripHours = (tripTold ? facts.number('trip-hours') : null) ?? UNKNOWN_TRIP_HOURS;
  const roads = roadsOut(facts);
  const roadHours = roads === 'more' ? 0 : ONE_ROAD_HOURS;
  const hours = TIMES_THE_TRIP * tripHours + SPARE_HOURS + roadHours;
  return {
    tripHours,
    tripTold,
    roads,
    hours,
    times: TIMES_THE_TRIP,
    spareHours: SPARE_HOURS,
    roadHours,
  };
}

/** Where it is not asked it does not matter, and no road is held against the home. */
function roadsOut(facts: Facts): LeaveAt['roads'] {
  if (facts.open('road-out')) return 'not-known';
  return facts.told('road-out') && facts.is('road-out', 'one') ? 'one' : 'more';
}
