import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import type { Route } from '../../routes/route';
import { loadsIn } from './route-loads';
import { SizeOdds } from './size-odds';

/** Share of outages of the goal's length ridden through with what must keep running, likely or careful, from a sample of starts. */
export function goalShare(
  home: Home,
  world: World,
  route: Route,
  { season, careful }: { season: Season; careful: boolean },
): number {
  const loads = loadsIn(home, route, 'must') ?? [];
  return new SizeOdds(home, world, season).sampledShare({ route, loads, careful });
}
