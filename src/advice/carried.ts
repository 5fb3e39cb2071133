import type { Home } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import { type MustCarried, mustCarried, mustLoads, mustMissed } from '../routes/must-carried';
import type { Route } from '../routes/route';

/** What a route does for what must keep running, by the one count of every paper. */
export interface Carried {
  readonly count: MustCarried;
  /** Has power from it. */
  readonly must: readonly LoadId[];
  /** Needs no power in the way of living the route counts on, and so is not missed. */
  readonly needless: readonly LoadId[];
  /** Has power from it, and need not keep running. */
  readonly more: readonly LoadId[];
}

export function carriedBy(home: Home, route: Route): Carried {
  const must = mustLoads(home).map(({ id }) => id);
  const missed = new Set(mustMissed(home, route).map(({ id }) => id));
  const has = (id: LoadId) => route.carries.includes(id);
  return {
    count: mustCarried(home, route),
    must: route.carries.filter((id) => must.includes(id)),
    needless: must.filter((id) => !missed.has(id) && !has(id)),
    more: route.carries.filter((id) => !must.includes(id)),
  };
}
