import { healthHangs } from '../home/health-devices';
import type { Home } from '../home/home';
import type { RouteKind } from '../kinds/route-kind';
import type { Figure } from '../quantity/figure';
import { figure } from '../quantity/figure';
import { formatQuantity } from '../quantity/format-quantity';
import { total } from './costs';
import { gapOf } from './gap';
import type { Lasting, Route } from './route';
import type { Stop } from './stop';

/** A route with the parts it does not have left empty, its verdict and cost worked out. */
export function makeRoute(
  kind: RouteKind,
  title: string,
  has: Partial<Route> & Pick<Route, 'lasting' | 'gap'>,
): Route {
  const stops = has.stops ?? [];
  const ifs = has.ifs ?? [];
  const parts = has.parts ?? [];
  return {
    kind,
    title,
    way: 'usual',
    verdict: stops.length > 0 ? 'cannot' : ifs.length > 0 ? 'works-if' : 'works',
    stops,
    ifs,
    carries: [],
    leavesOut: [],
    power: null,
    nameplateKwh: null,
    usableKwh: null,
    solarKw: null,
    sizeByOdds: null,
    fuel: null,
    generator: null,
    notes: [],
    ...has,
    parts,
    costUsd: total(parts),
  };
}

/** A route that cannot work here: only why. */
export function cannot(kind: RouteKind, title: string, stops: readonly Stop[]): Route {
  return makeRoute(kind, title, {
    stops,
    gap: gapOf('not-worked-out'),
    lasting: lasts(zeroHours, false, 'It cannot be used here.'),
  });
}

export function lasts(hours: Figure | null, reachesGoal: boolean, says: string): Lasting {
  return { hours, reachesGoal, says };
}

const zeroHours = figure({
  value: 0,
  unit: 'h',
  source: { kind: 'formula', label: 'no power from this route' },
});

/** Hours against the goal, in a sentence: "This lasts about 30 h (20 to 40 h); you asked for 3 days." */
export function lastsHours(home: Home, hours: Figure, of: string): Lasting {
  const goal = home.goalHours.value;
  const reaches = countedHours(home, hours) >= goal;
  const said = hoursRange(hours);
  const wish = formatQuantity(goal, 'h');
  const says = reaches
    ? `${of} lasts ${said}; you asked for ${wish}.`
    : `${of} lasts ${said}. It does not reach the ${wish} you asked for.`;
  return lasts(hours, reaches, says);
}

/** The hours a route is judged by: the likely ones, or the careful ones where health hangs on power. */
export function countedHours(home: Home, hours: Figure): number {
  return healthHangs(home) ? hours.low : hours.value;
}

/** "about 2 days 4 h (careful count 30 h)": the low end of a route's hours is its careful count. */
export function hoursRange(hours: Figure): string {
  const [low, likely] = [hours.low, hours.value].map((h) => formatQuantity(Math.round(h), 'h'));
  return low === likely ? `about ${likely}` : `about ${likely} (careful count ${low})`;
}
