import type { Home } from '../home/home';
import { isPack, isSource } from '../kinds/ask-traits';
import { traitsOf } from '../kinds/route-traits';
import { budgetUsd, withinBudgetUsd } from '../routes/budget';
import { gasolineLimitGal } from '../routes/gasoline-limit';
import { carriesAllMust, mustCarried } from '../routes/must-carried';
import type { Route } from '../routes/route';

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
 * The route to advise: the cheapest whose likely price is within the money told and that carries all that must run for the time asked;
 * where none does, the one within it that comes nearest, one that leaves nothing out first; where it buys none, getting
 * ready. Where no money was told, none is too dear.
 */
export function advise(home: Home, routes: readonly Route[]): Advice {
  const budget = budgetUsd(home);
  const able = routes.filter(
    (r) => r.verdict !== 'cannot' && isSource(traitsOf[r.kind]) && r.carries.length > 0,
  );
  const whole = able.filter((route) => doesWholeJob(home, route)).sort(byCost);
  const affordable = able.filter((r) => withinBudgetUsd(home, r.costUsd.value));
  const wholeAffordable = affordable.filter((route) => doesWholeJob(home, route)).sort(byCost)[0];
  const nearest = [...affordable].sort(
    (a, b) =>
      Number(carriesAllForLong(home, b)) - Number(carriesAllForLong(home, a)) ||
      share(home, b) - share(home, a) ||
      byCost(a, b),
  )[0];
  const ready = routes.find((r) => !isSource(traitsOf[r.kind]))!;
  const chosen = wholeAffordable ?? nearest ?? ready;
  const wider = widerAtThatPrice(home, chosen, affordable);
  const route = wider ?? chosen;
  const cheapest = [...able].sort(byCost)[0] ?? null;
  const why = because(home, route, { whole: wholeAffordable !== undefined, budget, cheapest });
  const also = wider === undefined ? '' : LESS_PLUGGED_IN;
  return {
    route,
    because: `${why}${also}`,
    beside: able
      .filter((r) => r !== route && share(home, r) > 0)
      .sort((a, b) => share(home, b) - share(home, a) || byCost(a, b))
      .slice(0, 2),
    wholeJob: wholeAffordable === undefined ? (whole[0] ?? null) : null,
  };
}

/** Too little is known to advise a source: getting ready, and nothing laid beside it. */
export function onlyReady(routes: readonly Route[]): Advice {
  const route = routes.find((one) => !isSource(traitsOf[one.kind]))!;
  return {
    route,
    because: 'Too little is answered to advise more yet.',
    beside: [],
    wholeJob: null,
  };
}

const LESS_PLUGGED_IN =
  ' With less plugged in it lasts longer, as long as a battery for one job of the same price.';

/**
 * A pack that costs no more than the battery for one job, holds as much and takes all that one takes: with the rest
 * unplugged it does the same, and it can do more. A health device keeps its own battery.
 */
function widerAtThatPrice(
  home: Home,
  { kind, carries, costUsd, usableKwh }: Route,
  affordable: readonly Route[],
): Route | undefined {
  const medical = home.loads.some(
    (load) => carries.includes(load.id) && load.restsOn.includes('medical-devices'),
  );
  if (!traitsOf[kind].oneJob || medical) return undefined;
  return affordable
    .filter(
      (other) =>
        isPack(traitsOf[other.kind]) &&
        !traitsOf[other.kind].oneJob &&
        other.costUsd.value <= costUsd.value &&
        (other.usableKwh ?? 0) >= (usableKwh ?? 0) &&
        carries.every((name) => other.carries.includes(name)),
    )
    .sort(byCost)[0];
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

const usd = (dollars: number) => `$${Math.round(dollars).toLocaleString('en-US')}`;

function byCost(a: Route, b: Route): number {
  return a.costUsd.value - b.costUsd.value;
}

function because(
  home: Home,
  route: Route,
  { whole, budget, cheapest }: { whole: boolean; budget: number | null; cheapest: Route | null },
): string {
  if (!isSource(traitsOf[route.kind])) {
    return budget === null || cheapest === null
      ? 'No route that gives power is open here yet. Getting ready costs little and is worth doing first.'
      : `No route that gives power fits the ${usd(budget)} you told us. ${needsMore(cheapest, budget)} Getting ready costs little and is worth doing first.`;
  }
  if (whole) {
    return `Of the routes that carry all that must keep running for the time you asked, it costs least${budget === null ? `. ${NO_MONEY_TOLD}` : `, and it fits the ${usd(budget)} you told us.`}`;
  }
  const missing = !carriesAllMust(home, route);
  const hours = route.lasting.hours?.value ?? Infinity;
  const stored = hours < home.goalHours.value && hoursOnStored(home, route) > hours;
  const fuel = stored ? ', with as much fuel as may be stored' : '';
  const within = budget === null ? 'here' : `within the ${usd(budget)} you told us`;
  const money = budget === null ? ` ${NO_MONEY_TOLD}` : '';
  const today = stored ? ' on the fuel counted today' : '';
  return `No route ${within} does the whole job${today}. This one comes nearest: it carries ${missing ? 'the most of what' : 'all that'} must run for the most of the time${fuel}.${money}`;
}

/** What the cheapest source is likely to cost, and how much that is above what was told. */
function needsMore({ title, costUsd }: Route, budget: number): string {
  return `The cheapest, ${title.toLowerCase()}, is likely to cost ${usd(costUsd.value)}, ${usd(costUsd.value - budget)} more.`;
}

const NO_MONEY_TOLD =
  'You told us no amount of money, so none set a limit here: say what you can spend, and this may change.';
