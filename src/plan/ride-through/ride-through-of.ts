import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import type { Advice } from '../../routes/advise';
import type { Route } from '../../routes/route';
import { batteryRide } from './battery-ride';
import { engineRide } from './engine-ride';
import { neighboursOf } from './neighbours';
import type { RouteRide } from './ride-through';

/** How the route advised and those beside it ride through, in the goal's hardest season. */
export interface RideThrough {
  readonly season: Season;
  readonly goalHours: number;
  readonly routes: readonly RouteRide[];
}

export function rideThroughOf(home: Home, world: World, advice: Advice): RideThrough {
  const season = hardest(home);
  const routes = [advice.route, ...advice.beside].flatMap((route) =>
    rideOf(home, world, route, season),
  );
  return { season, goalHours: Math.round(home.goalHours.value), routes };
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

function hardest(home: Home): Season {
  const energy = (season: Season) => home.demand.must.kwhPerDay[season].value;
  return home.goalSeasons.reduce((a, b) => (energy(b) > energy(a) ? b : a));
}
