import { loadsIn } from '../../advice/ride/route-loads';
import { sampledStarts } from '../../advice/ride/sampled-starts';
import { HARD_START } from '../../advice/ride/start-shares';
import { type Walkable, walkableOf } from '../../advice/ride/walkable';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { manyWalks } from '../../outage/walk/many-walks';
import type { Walked } from '../../outage/walk/walk';
import type { Route } from '../../routes/route';
import { hourByHour } from './goal-walks';
import { onTheGauge } from './in-the-tank';
import type { BadCase } from './ride-through';

/**
 * One outage of the goal's length by the careful count, to draw: of those that start in the season, the one that lasts
 * as long as the route's careful hours; where these reach the goal, one than which one in ten leaves less. Null where
 * the record has no hour of the season.
 */
export function hardCase(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
  carefulHours = route.lasting.hours?.low ?? Infinity,
): BadCase | null {
  const goal = Math.round(home.goalHours.value);
  const classes = [loadsIn(home, route, 'must') ?? []];
  const way = walkableOf(home, drawn, route, { classes, season, careful: true });
  const start = hardStart(way, goal, carefulHours);
  return start === null ? null : onTheGauge(hourByHour(way, goal, start), route.fuel);
}

function hardStart(
  { system, record, startKwh, months }: Walkable,
  outageHours: number,
  carefulHours: number,
): number | null {
  const walk = manyWalks(system, record);
  const walks = sampledStarts(record.solarKw.length, months).map((start) => ({
    start,
    ...walk({ start, outageHours, startKwh }),
  }));
  const [first] = walks;
  if (first === undefined) return null;
  const asked = Math.round(carefulHours);
  if (asked < outageHours) {
    const away = ({ hoursServed }: Walked) => Math.abs(hoursServed - asked);
    return walks.reduce((a, b) => (away(b) < away(a) ? b : a), first).start;
  }
  walks.sort((a, b) => a.hoursServed - b.hoursServed || leftOf(a) - leftOf(b));
  return walks[Math.ceil(HARD_START * walks.length) - 1]!.start;
}

/** Fuel left, or charge where the fuel is piped: of two outages ridden through, the harder leaves less. */
function leftOf({ left }: Walked): number {
  return Number.isFinite(left.fuel) ? left.fuel + left.chargeKwh / 1000 : left.chargeKwh;
}
