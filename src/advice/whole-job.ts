import type { Home } from '../home/home';
import { carriesAllMust } from '../routes/must-carried';
import type { Route } from '../routes/route';

/** Carries everything that must run, for the time asked. */
export function doesWholeJob(
  home: Home,
  route: Pick<Route, 'carries' | 'lasting' | 'way'>,
): boolean {
  return route.lasting.reachesGoal && carriesAllMust(home, route);
}
