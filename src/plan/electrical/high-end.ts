import type { Home, Load } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import type { LoadId } from '../../home/loads/load-id';
import { traitsOf } from '../../kinds/route-traits';
import { softened } from '../../routes/fit-power';
import type { Route } from '../../routes/route';
import { ladderOf } from '../ladder/ladder';
import { byInverter, givesPower } from './route-traits';

/** What a route's loads ask at the high end of their ranges, where that is more than the route gives. */
export interface HighEndShortfall {
  readonly route: Route['kind'];
  /** An inverter shuts off above what it gives; a generator sags or trips. */
  readonly byInverter: boolean;
  readonly what: 'running' | 'starting';
  readonly unit: 'W' | 'VA';
  readonly asks: number;
  readonly gives: number;
  /** Loads whose ranges are widest: a label or a meter narrows them. */
  readonly measure: readonly LoadId[];
  /** In the order of the ladder, enough of them to make the rest fit; empty when none may go. */
  readonly offFirst: readonly LoadId[];
}

/** Loads named to be measured. */
const MOST_TO_MEASURE = 3;

/**
 * Where the high end of the need exceeds what a route gives, running (W) or starting (VA). Routes are sized by the
 * likely figures, so falling short is no fault of the size; it is said, because it is what the household meets on a bad day.
 */
export function highEndShortfalls(home: Home, routes: readonly Route[]): HighEndShortfall[] {
  return routes
    .filter((route) => givesPower(route) && !bringsItsPump(route))
    .flatMap((route) => [shortfall(home, route, 'running'), shortfall(home, route, 'starting')])
    .filter((one) => one !== null);
}

/** What a route gives for hours at this site, W: a generator loses by height and heat, an inverter does not. */
export function givesWatts(route: Route): number {
  const direct = route.generator !== null && !traitsOf[route.kind].inverter;
  return direct ? route.generator!.siteKw * 1000 : (route.power?.continuousWatts ?? 0);
}

/** A battery for the sump comes with a pump of its own. */
const bringsItsPump = (route: Route) =>
  traitsOf[route.kind].oneJob && route.carries.includes('sump');

function shortfall(
  home: Home,
  route: Route,
  what: HighEndShortfall['what'],
): HighEndShortfall | null {
  const running = what === 'running';
  const asks = running ? route.power!.runningWatts.high : route.power!.startDemandVa.high;
  const gives = running ? givesWatts(route) : route.power!.startVa;
  if (asks <= gives) return null;
  const loads = carriedLoads(home, route);
  return {
    route: route.kind,
    byInverter: byInverter(route),
    what,
    unit: running ? 'W' : 'VA',
    asks,
    gives,
    measure: widest(loads, what),
    offFirst: enoughOff(home, route, { loads, what, gives }),
  };
}

/** Loads as the source sees them, a compressor behind its soft starter. */
export function carriedLoads(home: Home, route: Route): Load[] {
  const soft = route.parts.some((part) => part.equipmentClass === 'soft-starter');
  const carried = home.loads.filter((load) => route.carries.includes(load.id));
  return soft ? carried.map(softened) : carried;
}

function widest(loads: readonly Load[], what: HighEndShortfall['what']): LoadId[] {
  const span = (load: Load) => {
    const of = what === 'running' ? load.runningWatts : load.startVa;
    return of === null ? 0 : of.high - of.value;
  };
  return loads
    .filter((load) => span(load) > 0)
    .sort((a, b) => span(b) - span(a))
    .slice(0, MOST_TO_MEASURE)
    .map((load) => load.id);
}

/** From the first rungs of the ladder; the last rung and what life hangs on stay. */
function enoughOff(
  home: Home,
  route: Route,
  given: { loads: readonly Load[]; what: HighEndShortfall['what']; gives: number },
): LoadId[] {
  const rungs = ladderOf(home, route).filter((step) => step.atPercent < 100);
  const order = rungs
    .slice(0, -1)
    .flatMap((step) => step.switchOff)
    .filter((id) => id !== 'house-standby');
  const fits = (off: readonly LoadId[]) => {
    const rest = given.loads.filter((load) => !off.includes(load.id));
    const { runningWatts, startVa } = demandOf(rest, home.goalSeasons);
    return (given.what === 'running' ? runningWatts.high : startVa.high) <= given.gives;
  };
  for (let n = 1; n <= order.length; n++) {
    if (fits(order.slice(0, n))) return order.slice(0, n);
  }
  return [];
}
