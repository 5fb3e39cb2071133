import { goalShare } from '../../advice/ride/goal-share';
import { loadsIn } from '../../advice/ride/route-loads';
import type { Home, Season, Way } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { healthHangs } from '../../home/people/health-devices';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { outletsOnly } from '../../kinds/ask-traits';
import type { RouteKind } from '../../kinds/route-kind';
import { traitsOf } from '../../kinds/route-traits';
import { onceStored } from '../../routes/fuel/once-stored';
import { runHours } from '../../routes/fuel/run-hours';
import { ALL_DAY } from '../../routes/kinds/portable-generator';
import { carriesAllMust } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import type { RideThrough } from '../ride-through/ride-through-of';
import { goalOdds } from './goal-odds';
import { hoursInWay, type TwoHours } from './hours-in-way';

/** How one route serves one way of living. */
export interface InWay {
  /** Shares of outages of the goal's length in the hardest season, likely and careful, 0 to 1. */
  readonly share: number;
  readonly carefulShare: number;
  /** Null where no end is foreseen or none is counted. */
  readonly hours: TwoHours | null;
  /** Carries all that must run through 9 of 10 of them; by the careful count where health hangs on power. */
  readonly reaches: boolean;
}

/** The same equipment in both ways. */
export interface RouteInWays {
  readonly kind: RouteKind;
  /** The way it is sized for. */
  readonly sizedFor: Way;
  /** Gallons counted, once the cans in its parts are filled; null where none are to be filled. */
  readonly storedGal: number | null;
  /** Thriftily its generator runs only while something is on, and there are hours in which nothing is. */
  readonly restsThriftily: boolean;
  readonly usual: InWay;
  readonly thrifty: InWay;
}

/** Outages that must be ridden through for "reaches", 0 to 1. */
const ENOUGH = 0.9;

/** None for a route that gives no power here. */
export function routeInWays(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  ride: RideThrough,
): RouteInWays[] {
  const { season } = ride;
  const found = ride.routes.find((one) => one.kind === route.kind);
  if (found === undefined) return [];
  const stored = onceStored(livedHome(home, route.way), route);
  const counted = stored?.route ?? route;
  const own = stored === null ? null : found.onceStored;
  const today = found.odds.must?.find(({ hours }) => hours === ride.goalHours)?.season ?? 0;
  const ownShares = {
    share: own?.share ?? today,
    carefulShare: own?.carefulShare ?? found.carefulShare,
  };
  const at = (way: Way): InWay => {
    const lived = inWay(home, counted, way);
    const shares =
      way === route.way
        ? ownShares
        : sharesOf(home, drawn, lived, { season, ownShares, sampled: own !== null });
    const { hours } = counted.lasting;
    const ownHours = hours === null ? null : { likely: hours.value, careful: hours.low };
    return {
      ...shares,
      hours: way === route.way ? ownHours : hoursInWay(home, drawn, lived, season),
      reaches:
        carriesAllMust(home, lived) &&
        (healthHangs(home) ? shares.carefulShare : shares.share) >= ENOUGH,
    };
  };
  return [
    {
      kind: route.kind,
      sizedFor: route.way,
      storedGal: stored?.gallons ?? null,
      restsThriftily: restsThriftily(home, route, season),
      usual: at('usual'),
      thrifty: at('thrifty'),
    },
  ];
}

function restsThriftily(home: Home, route: Route, season: Season): boolean {
  if (route.generator === null) return false;
  const thrifty = inWay(home, route, 'thrifty');
  const loads = loadsIn(home, thrifty, 'must') ?? [];
  return runHours(thrifty, loads, season, ALL_DAY).includes(0);
}

/** The same equipment with the loads of a way: as usual it has to run again what thrift had made needless. */
export function inWay(home: Home, route: Route, way: Way): Route {
  if (way === route.way) return route;
  const was = new Set(livedHome(home, route.way).loads.map(({ id }) => id));
  const more = livedHome(home, way).loads.filter(
    (load) =>
      load.rank === 'must' &&
      !load.offInOutage &&
      !was.has(load.id) &&
      (load.plugIn || !outletsOnly(traitsOf[route.kind])),
  );
  const { generator } = route;
  const carries = [...route.carries, ...more.map(({ id }) => id)];
  if (generator === null || route.usableKwh !== null || way === 'thrifty') {
    return { ...route, way, carries };
  }
  // Sized to run only while something is on, as usual it runs day and night.
  return { ...route, way, carries, generator: { ...generator, runsByHour: ALL_DAY } };
}

type Shares = Pick<InWay, 'share' | 'carefulShare'>;

/** Less is never worse: where as usual all outages are ridden through, nothing is counted again. */
function sharesOf(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { season, ownShares, sampled }: { season: Season; ownShares: Shares; sampled: boolean },
): Shares {
  // Odds once the cans are filled come from the sampled starts: both ways from the same.
  const likely = () =>
    sampled
      ? goalShare(home, drawn, route, { season, careful: false })
      : goalOdds(home, drawn, route, season);
  const known = (share: number) => route.way === 'thrifty' && share === 1;
  return {
    share: known(ownShares.share) ? 1 : likely(),
    carefulShare: known(ownShares.carefulShare)
      ? 1
      : goalShare(home, drawn, route, { season, careful: true }),
  };
}
