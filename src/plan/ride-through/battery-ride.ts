import type { Home, Load, Season } from '../../home/home';
import type { World } from '../../home/world';
import { badCaseStart } from '../../outage/bad-case';
import { chargeToKeep } from '../../outage/charge-to-keep';
import {
  type ChargeNeeded,
  chargeForEveryStart,
  neededForEveryStart,
} from '../../outage/every-start';
import { hoursSurvived } from '../../outage/hours-survived';
import { HOURS_A_YEAR } from '../../outage/month-of-hour';
import { type NetEnergy, netEnergy, type StoreLimits } from '../../outage/net-energy';
import { oddsFromFull } from '../../outage/ride-through-odds';
import { seasonHours, seasonMonths } from '../../outage/season';
import { unservedByMonth } from '../../outage/unserved-by-month';
import { limitsOf, monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { failingOf, sayFailing, type Walkable } from './failing';
import { goalWalks, hourByHour } from './goal-walks';
import {
  type BadCase,
  LENGTHS,
  type Odds,
  type RouteRide,
  SCOPES,
  type Scope,
} from './ride-through';
import { loadsIn } from './route-loads';

/** What a plug-in pack draws by being on, kW. Common practice, 8 to 25 W. */
const PACK_IDLE_KW = 0.015;

/** A battery and what feeds it, as a route has them. */
export interface BatterySize {
  readonly usableKwh: number;
  readonly inverterKw: number;
  readonly solarKw: number;
}

/** Odds, charge and bad case of a battery route, from every hour an outage could start in the drawn years. */
export function batteryRide(
  home: Home,
  world: World,
  route: Route,
  season: Season,
): Omit<RouteRide, 'neighbours'> {
  const size = sizeOf(route);
  const goal = Math.round(home.goalHours.value);
  const odds: Partial<Record<Scope, Odds[]>> = {};
  for (const scope of SCOPES) {
    const found = batteryOdds(home, world, route, { scope, season });
    if (found !== null) odds[scope] = found;
  }
  const mustLoads = loadsIn(home, route, 'must') ?? [];
  const must = energyOf(world, route, mustLoads, size);
  const way = walkable(world, route, mustLoads, size, season);
  const charge = chargeForEveryStart(must.netKwh, goal, size.usableKwh);
  const [middle, most, worst] = chargeToKeep(charge, size.usableKwh);
  const of = (months: readonly (number | null)[]) => hardestMonth(months, season);
  return {
    kind: route.kind,
    title: route.title,
    basis: `every hour of ${world.years} drawn years as the start of an outage on a battery`,
    odds,
    fromHalfFull: shareInSeason(
      season,
      must.netKwh.length,
      (s) =>
        charge.unavoidableKwh[s]! + Math.max(0, charge.thresholdKwh[s]! - size.usableKwh / 2) <
        1e-9,
    ),
    chargeAtStart: {
      median: of(middle!.months),
      oneInTen: of(most!.months),
      worst: of(worst!.months),
    },
    keepByMonth: most!.months.map((kwh) => (kwh === null ? null : kwh / size.usableKwh)),
    unservedKwh: unserved(must, size, goal, charge, way),
    unservedHours: goalWalks(way, goal).unservedHours,
    failsFirst: sayFailing(failingOf(way), false),
    badCase: badCaseOf(must, goal, way),
  };
}

/** The odds of a battery route in one scope; null when it is the same as the scope before, or holds nothing. */
export function batteryOdds(
  home: Home,
  world: World,
  route: Route,
  { scope, season, years = world.years }: { scope: Scope; season: Season; years?: number },
): Odds[] | null {
  const loads = loadsIn(home, route, scope);
  if (loads === null || loads.length === 0) return null;
  const size = sizeOf(route);
  const hours = Math.min(years, world.years) * HOURS_A_YEAR;
  const energy = netEnergy({
    loadKw: world.loadKw(loads).subarray(0, hours),
    supplyKw: world.sunKw(size.solarKw).subarray(0, hours),
    limits: limits(route, size),
  });
  return oddsOf(energy, size, season);
}

function sizeOf(route: Route): BatterySize {
  return {
    usableKwh: route.usableKwh ?? 0,
    inverterKw: (route.power?.continuousWatts ?? 0) / 1000,
    solarKw: route.solarKw ?? 0,
  };
}

function limits(route: Route, { inverterKw }: BatterySize): StoreLimits {
  const fixed = limitsOf(inverterKw);
  const isPack = ['single-battery', 'power-pack', 'vehicle'].includes(route.kind);
  return isPack ? { ...fixed, idleKw: PACK_IDLE_KW } : fixed;
}

/** Net energy of every hour for a route's battery with these loads. */
export function energyOf(
  world: World,
  route: Route,
  loads: readonly Load[],
  size: BatterySize,
): NetEnergy {
  const loadKw = world.loadKw(loads);
  const supplyKw = world.sunKw(size.solarKw);
  return netEnergy({ loadKw, supplyKw, limits: limits(route, size) });
}

function oddsOf(energy: NetEnergy, size: BatterySize, season: Season): Odds[] {
  const limitHours = LENGTHS.at(-1)!;
  const survived = hoursSurvived({ ...energy, capKwh: size.usableKwh, limitHours });
  return oddsFromFull(survived, LENGTHS).map(({ hours, all, months }) => ({
    hours,
    year: all ?? 0,
    months,
    season: shareInSeason(season, survived.length, (s) => survived[s]! >= hours),
    standardError: null,
  }));
}

/** Share of the season's start hours, over all years, for which something holds. */
export function shareInSeason(
  season: Season,
  count: number,
  holds: (start: number) => boolean,
): number {
  const { first, count: long } = seasonHours(monthsOf[season]);
  let [yes, all] = [0, 0];
  for (let year = 0; year + 8760 <= count; year += 8760) {
    for (let h = 0; h < long; h++) {
      all += 1;
      if (holds((year + first + h) % count)) yes += 1;
    }
  }
  return all === 0 ? 0 : yes / all;
}

function hardestMonth(months: readonly (number | null)[], season: Season): number | null {
  const { firstMonth, months: count } = monthsOf[season];
  const own = Array.from({ length: count }, (_, i) => months[(firstMonth + i) % 12]!);
  return own.some((kwh) => kwh === null) ? null : Math.max(...own.map(Number));
}

function unserved(
  energy: NetEnergy,
  size: BatterySize,
  goal: number,
  charge: ChargeNeeded,
  { months, system }: Walkable,
): number {
  const byMonth = unservedByMonth({
    ...energy,
    capKwh: size.usableKwh,
    startKwh: size.usableKwh,
    outageHours: goal,
    dischargeEfficiency: system.battery!.limits.dischargeEfficiency,
    charge,
  });
  const own = seasonMonths(months).map((month) => byMonth.months[month] ?? 0);
  return own.reduce((sum, kwh) => sum + kwh, 0) / own.length;
}

/** The same battery, loads and sun as hours to be walked. */
function walkable(
  world: World,
  route: Route,
  loads: readonly Load[],
  size: BatterySize,
  season: Season,
): Walkable {
  const loadKw = world.loadKw(loads);
  return {
    system: {
      battery: { capKwh: size.usableKwh, limits: limits(route, size) },
      engine: null,
      vehicle: null,
      ladder: [],
    },
    record: { loadsKw: [loadKw], solarKw: world.sunKw(size.solarKw) },
    startKwh: size.usableKwh,
    months: monthsOf[season],
  };
}

function badCaseOf({ netKwh }: NetEnergy, goal: number, way: Walkable): BadCase | null {
  const found = badCaseStart(neededForEveryStart(netKwh, goal), way.months);
  return found === null ? null : hourByHour(way, goal, found.start);
}
