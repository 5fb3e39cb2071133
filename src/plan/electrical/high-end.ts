import { demandOf } from '../../home/demand';
import type { Home, Load } from '../../home/home';
import { traitsOf } from '../../kinds/route-traits';
import { formatQuantity } from '../../quantity/format-quantity';
import { softened } from '../../routes/fit-power';
import type { Route } from '../../routes/route';
import { ladderOf } from '../ladder';
import { inSentence, listOf } from '../list-of';
import { byInverter, givesPower } from './route-traits';

/** What a route's loads ask at the high end of their ranges, where that is more than the route gives. */
export interface HighEndGap {
  readonly route: Route['kind'];
  readonly what: 'running' | 'starting';
  readonly unit: 'W' | 'VA';
  readonly asks: number;
  readonly gives: number;
  /** Loads whose ranges are widest: a label or a meter narrows them. */
  readonly measure: readonly string[];
  /** In the order of the ladder, enough of them to make the rest fit; empty when none may go. */
  readonly offFirst: readonly string[];
  readonly says: string;
}

/** Loads named to be measured. */
const MOST_TO_MEASURE = 3;

/**
 * Where the high end of the need exceeds what a route gives, running (W) or starting (VA). Routes are sized by the
 * likely figures, so a gap is no fault of the size; it is said, because it is what the household meets on a bad day.
 */
export function highEndGaps(home: Home, routes: readonly Route[]): HighEndGap[] {
  return routes
    .filter((route) => givesPower(route) && !bringsItsPump(route))
    .flatMap((route) => [gap(home, route, 'running'), gap(home, route, 'starting')])
    .filter((one) => one !== null);
}

/** What a route gives for hours at this site, W: an engine loses by height and heat, an inverter does not. */
export function givesWatts(route: Route): number {
  const direct = route.engine !== null && !traitsOf[route.kind].inverter;
  return direct ? route.engine!.siteKw * 1000 : (route.power?.continuousWatts ?? 0);
}

/** A battery for the sump comes with a pump of its own. */
const bringsItsPump = (route: Route) =>
  traitsOf[route.kind].oneJob && route.carries.includes('Sump pump');

function gap(home: Home, route: Route, what: HighEndGap['what']): HighEndGap | null {
  const running = what === 'running';
  const asks = running ? route.power!.runningWatts.high : route.power!.startDemandVa.high;
  const gives = running ? givesWatts(route) : route.power!.startVa;
  if (asks <= gives) return null;
  const loads = carriedLoads(home, route);
  const of = {
    route: route.kind,
    what,
    unit: running ? ('W' as const) : ('VA' as const),
    asks,
    gives,
    measure: widest(loads, what),
    offFirst: enoughOff(home, route, { loads, what, gives }),
  };
  return { ...of, says: say(of, byInverter(route)) };
}

/** Loads as the source sees them, a compressor behind its soft starter. */
export function carriedLoads(home: Home, route: Route): Load[] {
  const soft = route.parts.some((part) => part.equipmentClass === 'soft-starter');
  const carried = home.loads.filter((load) => route.carries.includes(load.name));
  return soft ? carried.map(softened) : carried;
}

function widest(loads: readonly Load[], what: HighEndGap['what']): string[] {
  const span = (load: Load) => {
    const of = what === 'running' ? load.runningWatts : load.startVa;
    return of === null ? 0 : of.high - of.value;
  };
  return loads
    .filter((load) => span(load) > 0)
    .sort((a, b) => span(b) - span(a))
    .slice(0, MOST_TO_MEASURE)
    .map((load) => load.name);
}

/** From the first rungs of the ladder; the last rung and what life hangs on stay. */
function enoughOff(
  home: Home,
  route: Route,
  of: { loads: readonly Load[]; what: HighEndGap['what']; gives: number },
): string[] {
  const rungs = ladderOf(home, route).filter((step) => step.atPercent < 100);
  const always = home.loads.find((load) => load.id === 'house-standby')?.name;
  const order = rungs
    .slice(0, -1)
    .flatMap((step) => step.switchOff)
    .filter((name) => name !== always);
  const fits = (off: readonly string[]) => {
    const rest = of.loads.filter((load) => !off.includes(load.name));
    const { runningWatts, startVa } = demandOf(rest, home.goalSeasons);
    return (of.what === 'running' ? runningWatts.high : startVa.high) <= of.gives;
  };
  for (let n = 1; n <= order.length; n++) {
    if (fits(order.slice(0, n))) return order.slice(0, n);
  }
  return [];
}

function say(of: Omit<HighEndGap, 'says'>, inverter: boolean): string {
  const { what, unit } = of;
  const [asks, gives] = [formatQuantity(of.asks, unit), formatQuantity(of.gives, unit)];
  const need =
    what === 'running'
      ? `With everything it carries on at once, at the high end, the need is ${asks}; it gives ${gives}`
      : `The hardest start at the high end is ${asks}; it lends ${gives} for a moment`;
  const then = inverter
    ? 'An inverter shuts off above that'
    : 'A generator sags or trips above that';
  return `${need}. ${then}, so ${remedy([of])}.`;
}

/** "measure the lights and the furnace, or read their labels; until then switch the microwave oven off first". */
export function remedy(gaps: readonly Pick<HighEndGap, 'what' | 'measure' | 'offFirst'>[]): string {
  const the = (names: readonly string[]) => listOf(names.map((name) => `the ${inSentence(name)}`));
  const narrow = gaps
    .filter(({ measure }) => measure.length > 0)
    .map(({ what, measure }) =>
      what === 'running'
        ? `measure ${the(measure)}, or read their labels`
        : `read the starting amps on the ${measure.length === 1 ? 'label' : 'labels'} of ${the(measure)}`,
    );
  const off = [...new Set(gaps.flatMap(({ offFirst }) => offFirst))];
  const then = gaps.some(({ offFirst }) => offFirst.length === 0)
    ? 'if they are at the high end, ask for the next larger size'
    : `until then switch ${the(off)} off first`;
  return [...narrow, then].join('; ');
}
