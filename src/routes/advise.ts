import type { Home } from '../home/home';
import { isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import { budgetUsd } from './costs';
import { gasolineLimitGal } from './gasoline-limit';
import { carriesAllMust, mustCarried } from './must-carried';
import type { Route } from './route';

export interface Advice {
  /** The route advised. */
  readonly route: Route;
  readonly because: string;
  /** Up to two others to lay beside it. */
  readonly beside: readonly Route[];
  /** The cheapest that would do the whole job, when the advised one does not. */
  readonly wholeJob: Route | null;
}

/**
 * The route to advise: the cheapest within the later budget that carries all that must run for the time asked;
 * where none does, the one within budget that comes nearest, one that leaves nothing out first; where the budget buys
 * none, getting ready.
 */
export function advise(home: Home, routes: readonly Route[]): Advice {
  const budget = budgetUsd(home);
  const able = routes.filter(
    (r) => r.verdict !== 'cannot' && isSource(traitsOf[r.kind]) && r.carries.length > 0,
  );
  const whole = able.filter((route) => doesWholeJob(home, route)).sort(byCost);
  const affordable = able.filter((r) => r.costUsd.low <= budget);
  const wholeAffordable = affordable.filter((route) => doesWholeJob(home, route)).sort(byCost)[0];
  const nearest = [...affordable].sort(
    (a, b) =>
      Number(carriesAllForLong(home, b)) - Number(carriesAllForLong(home, a)) ||
      share(home, b) - share(home, a) ||
      byCost(a, b),
  )[0];
  const ready = routes.find((r) => !isSource(traitsOf[r.kind]))!;
  const route = wholeAffordable ?? nearest ?? ready;
  return {
    route,
    because: `${because(home, route, { whole: wholeAffordable !== undefined, budget })}${atLowEnd(route, budget)}`,
    beside: able
      .filter((r) => r !== route && share(home, r) > 0)
      .sort((a, b) => share(home, b) - share(home, a) || byCost(a, b))
      .slice(0, 2),
    wholeJob: wholeAffordable === undefined ? (whole[0] ?? null) : null,
  };
}

/** Everything for so much of the time goes before a part of it for longer. Our judgement. */
const LONG_SHARE = 0.5;

/** A furnace left out is not made up for by a refrigerator that runs longer. */
function carriesAllForLong(home: Home, route: Route): boolean {
  return carriesAllMust(home, route) && share(home, route) >= LONG_SHARE;
}

/** Carries everything that must run, for the time asked. */
export function doesWholeJob(home: Home, route: Route): boolean {
  return route.lasting.reachesGoal && carriesAllMust(home, route);
}

/**
 * How much of the job a route does, 0 to 1: share of the must-run loads carried x share of the hours, with the gasoline
 * that may be stored for it counted as stored.
 */
export function share(home: Home, route: Route): number {
  const count = mustCarried(home, route);
  const carried = count.of === 0 ? 1 : count.carried / count.of;
  const hours = route.lasting.hours;
  const lasts =
    hours === null
      ? 1
      : Math.min(1, Math.max(hours.value, hoursOnStored(home, route)) / home.goalHours.value);
  return carried * lasts;
}

/** Hours on as much gasoline as may usually be kept; 0 for a route that burns none. Cans cost little beside a route. */
function hoursOnStored(home: Home, { fuel }: Route): number {
  if (fuel === null || fuel.atHand === null || fuel.fuel === 'propane') return 0;
  return (24 * gasolineLimitGal(home)) / Math.max(fuel.perDay.value, 0.01);
}

function atLowEnd(route: Route, budget: number): string {
  return route.costUsd.value > budget ? ' Your budget reaches only the low end of its price.' : '';
}

function byCost(a: Route, b: Route): number {
  return a.costUsd.value - b.costUsd.value;
}

function because(
  home: Home,
  route: Route,
  { whole, budget }: { whole: boolean; budget: number },
): string {
  const usd = `$${budget.toLocaleString('en-US')}`;
  if (!isSource(traitsOf[route.kind])) {
    return `No route that gives power fits a budget of ${usd} here. Getting ready costs little and is worth doing first.`;
  }
  if (whole) {
    return `Of the routes that carry all that must keep running for the time you asked, it costs least, and it fits your ${usd}.`;
  }
  const missing = !carriesAllMust(home, route);
  const hours = route.lasting.hours?.value ?? Infinity;
  const stored = hours < home.goalHours.value && hoursOnStored(home, route) > hours;
  const fuel = stored ? ', with as much fuel as may be stored' : '';
  return `No route within your ${usd} does the whole job. This one comes nearest: it carries ${missing ? 'the most of what' : 'all that'} must run for the most of the time${fuel}.`;
}
