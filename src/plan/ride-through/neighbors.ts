import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { batteryNeighbors } from './battery-neighbors';
import { generatorNeighbors } from './generator-neighbors';
import { packNeighbors } from './pack-neighbors';
import type { Neighbor } from './ride-through';

/** One step smaller and one larger of what a route is made of, and what each would bring. */
export function neighborsOf(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Neighbor[] {
  if (route.generator !== null) return generatorNeighbors(home, drawn, route, season);
  if (isPack(traitsOf[route.kind])) {
    return packNeighbors(home, drawn, route, season);
  }
  return batteryNeighbors(home, drawn, route, season);
}
