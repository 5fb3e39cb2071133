import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import { isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { batteryNeighbours } from './battery-neighbours';
import { engineNeighbours } from './engine-neighbours';
import { packNeighbours } from './pack-neighbours';
import type { Neighbour } from './ride-through';

/** One step smaller and one larger of what a route is made of, and what each would bring. */
export function neighboursOf(home: Home, world: World, route: Route, season: Season): Neighbour[] {
  if (route.engine !== null) return engineNeighbours(home, world, route, season);
  if (isPack(traitsOf[route.kind])) {
    return packNeighbours(home, world, route, season);
  }
  return batteryNeighbours(home, world, route, season);
}
