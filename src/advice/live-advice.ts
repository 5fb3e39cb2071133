import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import type { Route } from '../routes/route';
import { rank } from './list/list-of';
import type { Trial } from './trial';

const found = new WeakMap<Trial, Route>();

/**
 * The route the plan would advise, by the plan's own weighing of all sizes, fuel and ways of living, on the drawn years of a trial.
 * Nothing above the money told is looked at. Worked out once for each trial.
 */
export function liveRoute(trial: Trial): Route {
  const route = found.get(trial) ?? weighed(trial);
  found.set(trial, route);
  return route;
}

function weighed({ home, drawn, kinds, size }: Trial): Route {
  const { chosen } = rank(home, drawn, kinds, size, true);
  const ready = kinds.find(({ route }) => !isSource(traitsOf[route.kind]))!.route;
  return chosen === null ? ready : chosen.sized.whole();
}
