import type { Advice } from '../../advice/advice';
import { hardestSeason } from '../../advice/hardest-season';
import { goalShare } from '../../advice/ride/goal-share';
import { mustCarried } from '../../advice/ride/route-loads';
import { mustWalkable } from '../../advice/ride/walkable';
import { walkedOdds } from '../../advice/ride/walked-odds';
import type { Home, Season } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { traitsOf } from '../../kinds/route-traits';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import { batteryOdds, batteryRide } from './battery-ride';
import { lengthsFor } from './lengths';
import { neighborsOf } from './neighbors';
import type { OtherRide, RouteRide, Variant } from './ride-through';
import { variantsOf } from './variants';
import { walkedRide } from './walked-ride';

/** How the route advised and those beside it ride through, in the goal's hardest season. */
export interface RideThrough {
  readonly season: Season;
  readonly goalHours: number;
  readonly routes: readonly RouteRide[];
  /** The other battery routes that work here. */
  readonly others: readonly OtherRide[];
  /** Drawn years the others are counted from. */
  readonly othersYears: number;
}

/**
 * @param ladder the advised route with things switched off in their order; null where that changes nothing
 */
export function rideThroughOf(
  home: Home,
  drawn: SyntheticYears,
  advice: Advice,
  { all = [], ladder = null }: { all?: readonly Route[]; ladder?: Variant | null } = {},
): RideThrough {
  const season = hardestSeason(home);
  const shown = [advice.route, ...advice.beside];
  const routes = shown.flatMap((route) => rideOf(home, drawn, route, season));
  const others = all
    .filter((route) => shown.every((one) => one.kind !== route.kind))
    .filter((route) => route.verdict !== 'cannot' && route.generator === null)
    .filter((route) => route.usableKwh !== null && route.carries.length > 0)
    .map((route) => otherRide(home, drawn, route, season));
  const withLadder = routes.map((ride) =>
    ladder !== null && ride.kind === advice.route.kind
      ? { ...ride, variants: [...ride.variants, ladder] }
      : ride,
  );
  return {
    season,
    goalHours: Math.round(home.goalHours.value),
    routes: withLadder,
    others,
    othersYears: Math.min(OTHER_YEARS, drawn.years),
  };
}

function rideOf(asUsual: Home, drawn: SyntheticYears, route: Route, season: Season): RouteRide[] {
  const home = livedHome(asUsual, route.way);
  if (route.carries.length === 0 || route.verdict === 'cannot') return [];
  const walked =
    route.generator !== null || (traitsOf[route.kind].vehicle && route.usableKwh !== null);
  if (!walked && route.usableKwh === null) return [];
  const ride = (walked ? walkedRide : batteryRide)(home, drawn, route, season);
  return [
    {
      ...ride,
      carries: mustCarried(home, route),
      carefulShare: goalShare(home, drawn, route, { season, careful: true }),
      onceStored: goalOnceStored(home, drawn, route, season),
      variants: walked ? variantsOf(home, drawn, route, season) : [],
      neighbors: neighborsOf(home, drawn, route, season),
    },
  ];
}

function goalOnceStored(home: Home, drawn: SyntheticYears, route: Route, season: Season) {
  const stored = onceStored(home, route);
  if (stored === null) return null;
  const share = (careful: boolean) => goalShare(home, drawn, stored.route, { season, careful });
  return { gallons: stored.gallons, share: share(false), carefulShare: share(true) };
}

/** The routes not shown are counted from fewer of the drawn years, to keep a plan quick. */
const OTHER_YEARS = 20;

function otherRide(home: Home, drawn: SyntheticYears, route: Route, season: Season): OtherRide {
  const { kind, called } = route;
  const carries = mustCarried(home, route);
  if (traitsOf[kind].vehicle) {
    const must = mustWalkable(home, drawn, route, season);
    const lengths = lengthsFor(Math.round(home.goalHours.value));
    return { kind, called, carries, odds: walkedOdds(must, lengths, SAMPLE_EVERY_HOURS) };
  }
  const years = OTHER_YEARS;
  const odds = batteryOdds(home, drawn, route, { scope: 'must', season, years });
  return { kind, called, carries, odds: odds ?? [] };
}
