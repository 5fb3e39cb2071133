import type { Home, Load } from '../home/home';
import type { LeftOut, Route } from './route';
import type { PlainReason } from './why-left-out';

/** How many of the things that must keep running a route carries: the one count for every paper. */
export interface MustCarried {
  readonly carried: number;
  readonly of: number;
}

/** Everything the household said must keep running, also what no backup can carry. */
export function mustLoads(home: Home): Load[] {
  return home.loads.filter((load) => load.rank === 'must');
}

/** What must keep running and this route does not carry. */
export function mustMissed(home: Home, route: Pick<Route, 'carries'>): Load[] {
  return mustLoads(home).filter((load) => !route.carries.includes(load.id));
}

export function mustCarried(home: Home, route: Pick<Route, 'carries'>): MustCarried {
  const of = mustLoads(home).length;
  return { carried: of - mustMissed(home, route).length, of };
}

/** Carries everything that must keep running, for however long. */
export function carriesAllMust(home: Home, route: Pick<Route, 'carries'>): boolean {
  return mustMissed(home, route).length === 0;
}

/** The route with every missed load among what it leaves out, so that nothing told vanishes. */
export function withAllLeftOut(home: Home, route: Route): Route {
  if (route.verdict === 'cannot' || route.carries.length === 0) return route;
  const named = new Set(route.leavesOut.map((one) => one.load));
  const more = mustMissed(home, route)
    .filter((load) => !named.has(load.id))
    .map((load): LeftOut => ({ load: load.id, must: true, why: { code: whyLeftOut(load) } }));
  return more.length === 0 ? route : { ...route, leavesOut: [...route.leavesOut, ...more] };
}

function whyLeftOut(load: Load): PlainReason {
  return load.offInOutage ? 'off-in-any-outage' : 'more-than-carried';
}
