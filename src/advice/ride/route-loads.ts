import type { Home, Load } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { outletsOnly } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { fedHome } from '../../routes/fed-home';
import { mustCarried as countMust } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import type { MustCarried, Scope } from './odds';

/** The loads a route would carry in a scope, as its way of living has them; null when they are the same as in the scope before. */
export function loadsIn(home: Home, route: Route, scope: Scope): Load[] | null {
  const carries = new Set(route.carries);
  const { loads } = fedHome(route.kind, livedHome(home, route.way));
  const able = loads.filter((load) => !load.offInOutage && reachable(route, load));
  const must = able.filter((load) => load.rank === 'must' && carries.has(load.id));
  const good = [...must, ...able.filter((load) => load.rank === 'good')];
  const all = [...good, ...able.filter((load) => load.rank === 'wait')];
  if (scope === 'must') return must;
  if (scope === 'good') return good.length > must.length ? good : null;
  return all.length > good.length ? all : null;
}

/** A source with outlets only reaches what plugs in. */
function reachable(route: Route, load: Load): boolean {
  return load.plugIn || !outletsOnly(traitsOf[route.kind]);
}

/** How many of the things that must keep running a route carries. */
export function mustCarried(home: Home, route: Route): MustCarried {
  const { carried, of } = countMust(home, route);
  return { things: carried, of };
}
