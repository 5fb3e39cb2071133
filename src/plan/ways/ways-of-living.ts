import type { Advice } from '../../advice/advice';
import { hardestSeason } from '../../advice/hardest-season';
import type { Demand, Home, Season, Way } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { type Measure, measuresOf, thriftySum } from '../../home/measures/measures-of';
import { type Turn, turnsOf } from '../../home/measures/turns-of';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import type { Figure } from '../../quantity/figure';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import { hardCase } from '../ride-through/hard-case';
import type { RideThrough } from '../ride-through/ride-through-of';
import { type DayOfCase, daysOfCase } from './days-of-case';
import { hoursInWay } from './hours-in-way';
import { inWay, type RouteInWays, routeInWays } from './route-in-ways';

/** What must run, in one way of living, on the hardest day of the goal. */
export interface Profile {
  readonly way: Way;
  readonly kwhPerDay: Figure;
  readonly runningWatts: Figure;
  readonly startVa: Figure;
  /** Average power by hour of day, W, likely values. */
  readonly wattsByHour: readonly number[];
}

/** The two ways of living, and the way from one to the other. */
export interface WaysOfLiving {
  readonly season: Season;
  readonly usual: Profile;
  readonly thrifty: Profile;
  /** Every way to need less that has an effect here. */
  readonly measures: readonly Measure[];
  /** What the thrifty measures cost that take something off what must run, $. */
  readonly thriftyUsd: Figure;
  /** What thrifty means by the hour. */
  readonly turns: readonly Turn[];
  /** The careful count of the route advised, day by day in both; null where it gives no power or both are alike. */
  readonly days: Readonly<Record<Way, readonly DayOfCase[]>> | null;
  /** The route advised and those beside it, in both. */
  readonly routes: readonly RouteInWays[];
}

export function waysOfLiving(
  home: Home,
  drawn: SyntheticYears,
  { route, beside }: Advice,
  ride: RideThrough,
): WaysOfLiving {
  const season = hardestSeason(home);
  const measures = measuresOf(home);
  return {
    season,
    usual: profileOf(home.demand.must, 'usual', season),
    thrifty: profileOf(livedHome(home, 'thrifty').demand.must, 'thrifty', season),
    measures,
    thriftyUsd: thriftySum(home, measures).costUsd,
    turns: turnsOf(home),
    days: daysInWays(home, drawn, route, ride),
    routes: [route, ...beside].flatMap((one) => routeInWays(home, drawn, one, ride)),
  };
}

/** The same equipment and fuel as in `ride-through`, in its own way and in the other. */
function daysInWays(home: Home, drawn: SyntheticYears, route: Route, ride: RideThrough) {
  const own = ride.routes.find((one) => one.kind === route.kind)?.badCase ?? null;
  if (own === null || livedHome(home, 'thrifty').loads === home.loads) return null;
  const other: Way = route.way === 'usual' ? 'thrifty' : 'usual';
  const counted =
    own.storedGal === undefined ? null : onceStored(livedHome(home, route.way), route);
  const lived = inWay(home, counted?.route ?? route, other);
  const { season } = ride;
  const hours = hoursInWay(home, drawn, lived, season)?.careful ?? Infinity;
  const others = hardCase(livedHome(home, other), drawn, lived, season, hours);
  if (others === null) return null;
  const [mine, theirs] = [daysOfCase(own), daysOfCase(others)];
  return route.way === 'usual'
    ? { usual: mine, thrifty: theirs }
    : { usual: theirs, thrifty: mine };
}

function profileOf(
  { kwhPerDay, runningWatts, startVa, wattsByHour }: Demand,
  way: Way,
  season: Season,
): Profile {
  return {
    way,
    kwhPerDay: kwhPerDay[season],
    runningWatts,
    startVa,
    wattsByHour: wattsByHour[season],
  };
}
