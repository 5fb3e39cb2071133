import type { Home, Load } from '../home/home';
import { livedHome } from '../home/measures/lived-home';
import type { LeftOut, Route } from './route';
import type { PlainReason } from './why-left-out';

/** How many of the things that must keep running a route carries: the one count for every paper. */
export interface MustCarried {
  readonly carried: number;
  readonly of: number;
}

type Carrying = Pick<Route, 'carries' | 'way'>;

/** Everything the household said must keep running, also what no backup can carry. */
export function mustLoads(home: Home): Load[] {
  return home.loads.filter((load) => load.rank === 'must');
}

/** What must keep running and this route does not carry; what its way of living makes needless is not missed. */
export function mustMissed(home: Home, { carries, way }: Carrying): Load[] {
  return mustLoads(livedHome(home, way)).filter((load) => !carries.includes(load.id));
}

/** Of all that was told, also what a way of living makes needless: a lantern does what the lights did. */
export function mustCarried(home: Home, route: Carrying): MustCarried {
  const of = mustLoads(livedHome(home, 'usual')).length;
  return { carried: of - mustMissed(home, route).length, of };
}

/** Carries everything that must keep running, for however long. */
export function carriesAllMust(home: Home, route: Carrying): boolean {
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
