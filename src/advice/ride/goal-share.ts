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
  return oddsOf(home, world, season).sampledShare({ route, loads, careful });
}

const kept = new WeakMap<World, Map<Season, { readonly home: Home; readonly odds: SizeOdds }>>();

/** A plan asks for the shares of many routes in a row: hours cut for one serve the others. Of one home at a time, to keep memory small. */
function oddsOf(home: Home, world: World, season: Season): SizeOdds {
  const ofWorld = kept.get(world) ?? new Map();
  kept.set(world, ofWorld);
  const known = ofWorld.get(season);
  if (known?.home === home) return known.odds;
  const odds = new SizeOdds(home, world, season);
  ofWorld.set(season, { home, odds });
  return odds;
}
