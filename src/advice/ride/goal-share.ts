import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import type { Route } from '../../routes/route';
import { loadsIn } from './route-loads';
import { MEANS_EVERY_HOURS } from './sampled-starts';
import { walkableOf } from './walkable';
import { walkedShare } from './walked-odds';

/** Share of outages of the goal's length ridden through with what must keep running, likely or careful, from a sample of starts. */
export function goalShare(
  home: Home,
  world: World,
  route: Route,
  by: { season: Season; careful: boolean },
): number {
  const classes = [loadsIn(home, route, 'must') ?? []];
  const way = walkableOf(home, world, route, { classes, ...by });
  return walkedShare(way, Math.round(home.goalHours.value), MEANS_EVERY_HOURS).share;
}
