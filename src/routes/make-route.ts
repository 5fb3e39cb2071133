import type { Home } from '../home/home';
import { healthHangs } from '../home/people/health-devices';
import { kindOf, type RouteTitle } from '../kinds/route-title';
import type { Figure } from '../quantity/figure';
import { figure } from '../quantity/figure';
import { total } from './costs';
import type { HoursOf, HowLong } from './how-long';
import type { Lasting, Route } from './route';
import type { Stop } from './stops/stop';
import { transferTime } from './transfer-time';

/** A route with the parts it does not have left empty, its verdict and cost worked out. */
export function makeRoute(
  called: RouteTitle,
  has: Partial<Route> & Pick<Route, 'lasting' | 'transferTime'>,
): Route {
  const stops = has.stops ?? [];
  const ifs = has.ifs ?? [];
  const parts = has.parts ?? [];
  return {
    kind: kindOf(called),
    called,
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
export function cannot(called: RouteTitle, stops: readonly Stop[]): Route {
  return makeRoute(called, {
    stops,
    transferTime: transferTime('not-worked-out'),
    lasting: lasts(zeroHours, false, { code: 'cannot' }),
  });
}

export function lasts(hours: Figure | null, reachesGoal: boolean, how: HowLong): Lasting {
  return { hours, reachesGoal, how };
}

const zeroHours = figure({
  value: 0,
  unit: 'h',
  source: { kind: 'formula', is: 'no-power' },
});

/** Hours against the goal. */
export function lastsHours(home: Home, hours: Figure, given: HoursOf): Lasting {
  const goalHours = home.goalHours.value;
  const reaches = countedHours(home, hours) >= goalHours;
  return lasts(hours, reaches, { code: 'against-goal', of: given, goalHours });
}

/** The hours a route is judged by: the likely ones, or the careful ones where health hangs on power. */
export function countedHours(home: Home, hours: Figure): number {
  return healthHangs(home) ? hours.low : hours.value;
}
