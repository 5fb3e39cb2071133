import type { Route } from '../routes/route';

/** How many of the things that must keep running a route carries. `must`: how many there are in all. */
export function carriesOfMust(route: Route, must: number): { carried: number; of: number } {
  if (route.carries.length === 0) return { carried: 0, of: must };
  const missed = new Set(route.leavesOut.filter((load) => load.must).map((load) => load.name));
  return { carried: Math.max(0, must - missed.size), of: must };
}
