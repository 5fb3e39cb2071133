import type { Home } from '../home/home';
import type { LoadId } from '../home/loads/load-id';
import type { RouteKind } from '../kinds/route-kind';
import { budgetUsd, laterUsd } from '../routes/budget';
import { type OnceStored, onceStored } from '../routes/fuel/once-stored';
import { type MustCarried, mustCarried, mustMissed } from '../routes/must-carried';
import type { Route } from '../routes/route';
import { decisive, onlyUnknown, type Stop } from '../routes/stops/stop';

/** What papers say of a route beside the route itself: counted once, so that every paper has the same. */
export interface RouteCounts {
  readonly must: MustCarried;
  /** What must keep running and has no power from it. */
  readonly missed: readonly LoadId[];
  /** The same route once the cans in its list of parts are filled; null where none are to be filled. */
  readonly onceStored: OnceStored | null;
  /** It cannot be said to work, and only for want of answers. */
  readonly onlyUnknown: boolean;
  /** Of what closes it, what settles the matter. */
  readonly decisive: readonly Stop[];
  /** Where its likely price is above the money told, $: by how much, what was told, and how much of that is for later. */
  readonly aboveTold: {
    readonly byUsd: number;
    readonly toldUsd: number;
    readonly laterUsd: number;
  } | null;
  /** Where its likely price is within the money told and the high end of its price is not, $: that end, and how far above. */
  readonly highAbove: {
    readonly highUsd: number;
    readonly byUsd: number;
    readonly toldUsd: number;
  } | null;
}

function routeCounts(home: Home, route: Route): RouteCounts {
  return {
    must: mustCarried(home, route),
    missed: mustMissed(home, route).map(({ id }) => id),
    onceStored: onceStored(home, route),
    onlyUnknown: onlyUnknown(route.stops),
    decisive: decisive(route.stops),
    aboveTold: aboveTold(home, route),
    highAbove: highAbove(home, route),
  };
}

function aboveTold(home: Home, { costUsd }: Route): RouteCounts['aboveTold'] {
  const toldUsd = budgetUsd(home);
  if (toldUsd === null || costUsd.value <= toldUsd) return null;
  return { byUsd: costUsd.value - toldUsd, toldUsd, laterUsd: laterUsd(home) };
}

function highAbove(home: Home, { costUsd }: Route): RouteCounts['highAbove'] {
  const toldUsd = budgetUsd(home);
  if (toldUsd === null || costUsd.value > toldUsd || costUsd.high <= toldUsd) return null;
  return { highUsd: costUsd.high, byUsd: costUsd.high - toldUsd, toldUsd };
}

/** Of the kinds among these routes, of which there is one each. */
export type CountsByKind = Readonly<Record<RouteKind, RouteCounts>>;

export function countsByKind(home: Home, routes: readonly Route[]): CountsByKind {
  return Object.fromEntries(
    routes.map((route) => [route.kind, routeCounts(home, route)]),
  ) as CountsByKind;
}
