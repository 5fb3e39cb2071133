import type { Home } from '../home/home';
import { onceStored } from '../routes/fuel/once-stored';
import { mustCarried } from '../routes/must-carried';
import type { Route } from '../routes/route';

/** Up to two routes of other kinds to lay beside the one advised: those that do most of the job, the cheaper first. */
export function besideOf(home: Home, able: readonly Route[], advised: Route): Route[] {
  return able
    .filter((route) => route.kind !== advised.kind && shareOfJob(home, route) > 0)
    .sort((a, b) => shareOfJob(home, b) - shareOfJob(home, a) || a.costUsd.value - b.costUsd.value)
    .slice(0, 2);
}

/** Share of the must-run loads carried x share of the hours of a hard day, once its cans are filled, 0 to 1. */
export function shareOfJob(home: Home, route: Route): number {
  const count = mustCarried(home, route);
  const carried = count.of === 0 ? 1 : count.carried / count.of;
  const { hours } = (onceStored(home, route)?.route ?? route).lasting;
  return carried * (hours === null ? 1 : Math.min(1, hours.value / home.goalHours.value));
}
