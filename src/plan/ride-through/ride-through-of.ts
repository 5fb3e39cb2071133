import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import type { Advice } from '../../routes/advise';
import type { Route } from '../../routes/route';
import { batteryOdds, batteryRide } from './battery-ride';
import { engineRide } from './engine-ride';
import { neighboursOf } from './neighbours';
import type { OtherRide, RouteRide } from './ride-through';

/** How the route advised and those beside it ride through, in the goal's hardest season. */
export interface RideThrough {
  readonly season: Season;
  readonly goalHours: number;
  readonly routes: readonly RouteRide[];
  /** The other battery routes that work here. */
  readonly others: readonly OtherRide[];
}

export function rideThroughOf(
  home: Home,
  world: World,
  advice: Advice,
  all: readonly Route[] = [],
): RideThrough {
  const season = hardest(home);
  const shown = [advice.route, ...advice.beside];
  const routes = shown.flatMap((route) => rideOf(home, world, route, season));
  const others = all
    .filter((route) => shown.every((one) => one.kind !== route.kind))
    .filter((route) => route.verdict !== 'cannot' && route.engine === null)
    .filter((route) => route.usableKwh !== null && route.carries.length > 0)
    .map((route) => otherRide(home, world, route, season));
  return { season, goalHours: Math.round(home.goalHours.value), routes, others };
}

function rideOf(home: Home, world: World, route: Route, season: Season): RouteRide[] {
  if (route.carries.length === 0 || route.verdict === 'cannot') return [];
  if (route.engine !== null) return [{ ...engineRide(home, world, route, season), neighbours: [] }];
  if (route.usableKwh === null) return [];
  return [
    {
      ...batteryRide(home, world, route, season),
      neighbours: neighboursOf(home, world, route, season),
    },
  ];
}

/** The routes not shown are counted from fewer of the drawn years, to keep a plan quick. */
export const OTHER_YEARS = 20;

function otherRide(home: Home, world: World, route: Route, season: Season): OtherRide {
  const odds = batteryOdds(home, world, route, {
    scope: 'must',
    season,
    years: OTHER_YEARS,
  });
  return { kind: route.kind, title: route.title, odds: odds ?? [] };
}

function hardest(home: Home): Season {
  const energy = (season: Season) => home.demand.must.kwhPerDay[season].value;
  return home.goalSeasons.reduce((a, b) => (energy(b) > energy(a) ? b : a));
}
