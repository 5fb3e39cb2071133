import type { Home } from '../home/home';
import { hasGenerator, outletsOnly } from '../kinds/ask-traits';
import { type RouteTraits, traitsOf } from '../kinds/route-traits';
import { onceStored } from '../routes/fuel/once-stored';
import { mustCarried } from '../routes/must-carried';
import type { Route } from '../routes/route';

/**
 * Up to two routes of other kinds to lay beside the one advised: those that do most of the job, the cheaper first. What costs as much or more
 * and gains nothing is none of them: beside a battery that is there and lasts, no generator is worth a look.
 */
export function besideOf(home: Home, able: readonly Route[], advised: Route): Route[] {
  return able
    .filter(
      (route) =>
        route.kind !== advised.kind &&
        shareOfJob(home, route) > 0 &&
        (route.costUsd.value < advised.costUsd.value || gains(home, route, advised)),
    )
    .sort((a, b) => shareOfJob(home, b) - shareOfJob(home, a) || a.costUsd.value - b.costUsd.value)
    .slice(0, 2);
}

/** So much of the job of the one advised a quieter or handier one must do to be worth a look. Our judgement. */
const MUCH_OF_JOB = 0.5;

/** In what it carries, in hours up to the goal by either count, or, where it does much of the job, in what its way of giving power spares. */
function gains(home: Home, route: Route, advised: Route): boolean {
  const [a, b] = [traitsOf[route.kind], traitsOf[advised.kind]];
  return (
    route.carries.some((id) => !advised.carries.includes(id)) ||
    shareOfJob(home, route) > shareOfJob(home, advised) ||
    carefulHours(home, route) > carefulHours(home, advised) ||
    (shareOfJob(home, route) >= MUCH_OF_JOB * shareOfJob(home, advised) && spares(a, b))
  );
}

/** Fuel, somebody at home, a start by hand, or cords. */
const spares = (a: RouteTraits, b: RouteTraits): boolean =>
  (!hasGenerator(a) && hasGenerator(b)) ||
  (!a.byHand && b.byHand) ||
  (a.automatic && !b.automatic) ||
  (!outletsOnly(a) && outletsOnly(b));

/** Hours of a hard day by the careful count, no further than the goal. */
export function carefulHours(home: Home, route: Route): number {
  const { hours } = (onceStored(home, route)?.route ?? route).lasting;
  return Math.min(home.goalHours.value, hours?.low ?? Infinity);
}

/** Share of the must-run loads carried x share of the hours of a hard day, once its cans are filled, 0 to 1. */
export function shareOfJob(home: Home, route: Route): number {
  const count = mustCarried(home, route);
  const carried = count.of === 0 ? 1 : count.carried / count.of;
  const { hours } = (onceStored(home, route)?.route ?? route).lasting;
  return carried * (hours === null ? 1 : Math.min(1, hours.value / home.goalHours.value));
}
