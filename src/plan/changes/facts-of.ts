import type { Home, Season } from '../../home/home';
import { isSource } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { isOverDrawnYears } from '../../quantity/end-rule';
import type { Figure } from '../../quantity/figure';
import { onceStored } from '../../routes/fuel/once-stored';
import { mustLoads } from '../../routes/must-carried';
import type { Route } from '../../routes/route';
import type { Finding } from '../../rules/rule';
import type { Plan } from '../plan';
import type { HealthFirst } from '../ride-through/health-first';
import type {
  DevicesFact,
  Lasts,
  LoadFact,
  OddsFact,
  PlanFacts,
  RefillFact,
  Span,
} from './plan-facts';

/** What is known of a plan, whole or quick, once its route stands. */
export interface Found {
  readonly home: Home;
  readonly route: Route;
  readonly season: Season;
  readonly drawnYears: number;
  readonly undecided: boolean;
  readonly odds: OddsFact | null;
  readonly refill: RefillFact | null;
  readonly health: HealthFirst | null;
  readonly cautions: readonly Finding[];
  /** Beside the size advised. */
  readonly step?: -1 | 0 | 1;
}

/** The facts of a whole plan. */
export function factsOfPlan(plan: Plan): PlanFacts {
  const { home, rideThrough } = plan;
  const { route } = plan.advice;
  const ride = rideThrough.routes.find(({ kind }) => kind === route.kind);
  const goal = ride?.odds.must?.find(({ hours }) => hours === rideThrough.goalHours);
  return factsOf({
    home,
    route,
    season: rideThrough.season,
    drawnYears: plan.weatherYears,
    undecided: plan.undecided.length > 0,
    odds:
      goal === undefined ? null : { today: goal.season, stored: ride!.onceStored?.share ?? null },
    refill: null,
    health: plan.healthFirst,
    cautions: plan.cautions,
  });
}

/** The facts of a route that is advised. */
export function factsOf(found: Found): PlanFacts {
  const { home, route, season, drawnYears, undecided, odds, refill, health, cautions } = found;
  const stored = onceStored(home, route);
  return {
    drawnYears,
    undecided,
    route: {
      kind: route.kind,
      called: route.called,
      title: null,
      isSource: isSource(traitsOf[route.kind]),
      thriftily: route.way === 'thrifty',
    },
    size: {
      usableKwh: route.usableKwh,
      watts: route.generator === null ? null : (route.power?.continuousWatts ?? null),
      solarKw: route.solarKw,
      step: found.step ?? 0,
    },
    usd: spanOf(route.costUsd),
    goalHours: Math.round(home.goalHours.value),
    season,
    lasts: lastsOf(home, route),
    reachesGoal: (stored?.route ?? route).lasting.reachesGoal,
    odds,
    devices: devicesOf(health),
    onlyBridge: home.lifeSupport !== 'no',
    refill,
    leavesOut: leftOut(home, route),
    cautions: cautions.map(({ id, severity, careful }) => ({ id, severity, careful })),
  };
}

function devicesOf(health: HealthFirst | null): DevicesFact | 'none-carried' | null {
  if (health === null) return null;
  if (health.covered === null) return 'none-carried';
  const { likelyHours, carefulHours } = health.covered;
  return { likelyHours, carefulHours };
}

/** How long it lasts, on the fuel of today and with the cans filled. */
export function lastsOf(home: Home, route: Route): Lasts {
  const { hours } = route.lasting;
  if (!isSource(traitsOf[route.kind]) || route.carries.length === 0) return { code: 'no-power' };
  if (hours === null) return { code: 'no-end-foreseen' };
  const stored = onceStored(home, route);
  const then = stored?.route.lasting.hours ?? null;
  return {
    code: 'hours',
    overDrawnYears: isOverDrawnYears(hours.source.ends),
    today: spanOf(hours),
    stored:
      stored === null || then === null ? null : { gallons: stored.gallons, hours: spanOf(then) },
  };
}

/** Without a source nothing that must run is carried. */
function leftOut(home: Home, route: Route): LoadFact[] {
  const out = new Set(route.leavesOut.filter(({ must }) => must).map(({ load }) => load));
  const loads =
    route.carries.length === 0 ? mustLoads(home) : home.loads.filter(({ id }) => out.has(id));
  return loads.map(({ id, called }) => ({ id, name: called }));
}

const spanOf = ({ low, value, high }: Figure): Span => ({ low, likely: value, high });
