import type { Home, Load, Season } from '../../home/home';
import type { World } from '../../home/world';
import { badCaseStart } from '../../outage/bad-case';
import { chargeToKeep } from '../../outage/charge-to-keep';
import { chargeForEveryStart, neededForEveryStart } from '../../outage/every-start';
import { hoursSurvived } from '../../outage/hours-survived';
import { monthOfHour } from '../../outage/month-of-hour';
import { type NetEnergy, netEnergy, type StoreLimits } from '../../outage/net-energy';
import { oddsFromFull } from '../../outage/ride-through-odds';
import { seasonHours } from '../../outage/season';
import { unservedByMonth } from '../../outage/unserved-by-month';
import { limitsOf, monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { type BadCase, LENGTHS, type Odds, type RouteRide, type Scope } from './ride-through';
import { loadsIn } from './route-loads';

/** What a plug-in pack draws by being on, kW. Common practice, 8 to 25 W. */
const PACK_IDLE_KW = 0.015;
const scopes: readonly Scope[] = ['must', 'good', 'all'];

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
  for (const scope of scopes) {
    const loads = loadsIn(home, route, scope);
    if (loads !== null && loads.length > 0)
      odds[scope] = oddsOf(energyOf(world, route, loads, size), size, season);
  }
  const must = energyOf(world, route, loadsIn(home, route, 'must') ?? [], size);
  const charge = chargeForEveryStart(must.netKwh, goal, size.usableKwh);
  const [middle, most, worst] = chargeToKeep(charge, size.usableKwh);
  const of = (months: readonly (number | null)[]) => hardestMonth(months, season);
  return {
    kind: route.kind,
    title: route.title,
    basis: `every hour of ${world.years} drawn years as the start`,
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
    unservedKwh: unserved(must, size, goal, season, limits(route, size)),
    failsFirst: failsFirst(must),
    badCase: badCaseOf(world, must, size, goal, season, loadsIn(home, route, 'must') ?? []),
  };
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
  const supplyKw = new Float64Array(loadKw.length);
  const sun = size.solarKw > 0 ? world.sunKwhPerKw() : null;
  if (sun !== null) for (let i = 0; i < sun.length; i++) supplyKw[i] = sun[i]! * size.solarKw;
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
  season: Season,
  { dischargeEfficiency }: StoreLimits,
): number | null {
  const byMonth = unservedByMonth({
    ...energy,
    capKwh: size.usableKwh,
    startKwh: size.usableKwh,
    outageHours: goal,
    dischargeEfficiency,
  });
  const { firstMonth, months } = monthsOf[season];
  const own = Array.from({ length: months }, (_, i) => byMonth.months[(firstMonth + i) % 12] ?? 0);
  return own.reduce((sum, kwh) => sum + kwh, 0) / own.length;
}

function failsFirst({ overloadKwh }: NetEnergy): string {
  return overloadKwh.some((kwh) => kwh > 0)
    ? 'first, the inverter gives no more in the hours of highest use'
    : 'first, the battery runs empty';
}

function badCaseOf(
  world: World,
  energy: NetEnergy,
  size: BatterySize,
  goal: number,
  season: Season,
  loads: readonly Load[],
): BadCase | null {
  const found = badCaseStart(neededForEveryStart(energy.netKwh, goal), monthsOf[season]);
  if (found === null) return null;
  const loadKw = world.loadKw(loads);
  const sun = size.solarKw > 0 ? world.sunKwhPerKw() : null;
  const hours = [];
  let chargeKwh = size.usableKwh;
  let endsAfter: number | null = null;
  for (let hour = 0; hour < Math.min(goal, LENGTHS.at(-1)!); hour++) {
    const at = (found.start + hour) % loadKw.length;
    const next = chargeKwh + energy.netKwh[at]!;
    if (endsAfter === null && (next < -1e-9 || energy.overloadKwh[at]! > 0)) endsAfter = hour;
    chargeKwh = Math.min(size.usableKwh, Math.max(0, next));
    hours.push({
      hour,
      loadKw: loadKw[at]!,
      sunKw: sun === null ? 0 : sun[at]! * size.solarKw,
      chargeKwh,
    });
  }
  return { month: monthOfHour(found.start % 8760), hourOfDay: found.start % 24, hours, endsAfter };
}
