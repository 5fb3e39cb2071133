import type { Home, Load, Season } from '../../home/home';
import type { World } from '../../home/world';
import { seasonMonths } from '../../outage/season';
import { sampleOutages } from '../../outage/walk/sampled-odds';
import type { WalkSystem } from '../../outage/walk/system';
import { fuelLine } from '../../physics/engine-fuel';
import { limitsOf, monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { type EngineFuel, engineType, fuelHeatKwh } from '../../tables/fuels';
import { failingOf, sayFailing, type Walkable } from './failing';
import { goalWalks, hourByHour } from './goal-walks';
import { LENGTHS, type Odds, type RouteRide, SCOPES, type Scope } from './ride-through';
import { loadsIn } from './route-loads';
import { WALK_EVERY_HOURS, WALK_MORE_EVERY_HOURS } from './sampled-starts';

/** Odds of an engine route, walked hour by hour from a sample of start hours: fuel depends on the time since the start. */
export function engineRide(
  home: Home,
  world: World,
  route: Route,
  season: Season,
): Omit<RouteRide, 'neighbours'> {
  const odds: Partial<Record<Scope, Odds[]>> = {};
  for (const scope of SCOPES) {
    const loads = loadsIn(home, route, scope);
    if (loads === null) continue;
    const everyHours = scope === 'must' ? WALK_EVERY_HOURS : WALK_MORE_EVERY_HOURS;
    odds[scope] = sampledOdds(walkable(world, route, loads, season), everyHours);
  }
  const must = walkable(world, route, loadsIn(home, route, 'must') ?? [], season);
  const goal = Math.round(home.goalHours.value);
  const { unservedHours, unservedKwh, hardStart } = goalWalks(must, goal);
  const starts = Math.ceil(must.record.solarKw.length / WALK_EVERY_HOURS);
  return {
    kind: route.kind,
    title: route.title,
    basis: `a sample for engines: ${starts.toLocaleString('en-US')} start hours of ${world.years} drawn years, one in ${WALK_EVERY_HOURS} (with more than what must run, one in ${WALK_MORE_EVERY_HOURS.toLocaleString('en-US')}), with the standard error beside; fuel at hand only, no refill counted`,
    odds,
    fromHalfFull: null,
    chargeAtStart: null,
    keepByMonth: null,
    unservedKwh,
    unservedHours,
    failsFirst: sayFailing(failingOf(must), route.fuel?.atHand === null),
    badCase: hardStart === null ? null : hourByHour(must, goal, hardStart),
  };
}

function walkable(world: World, route: Route, loads: readonly Load[], season: Season): Walkable {
  const loadKw = world.loadKw(loads);
  return {
    system: systemOf(route),
    record: { loadsKw: [loadKw], solarKw: world.sunKw(0) },
    startKwh: route.usableKwh ?? 0,
    months: monthsOf[season],
  };
}

function sampledOdds({ system, record, startKwh, months }: Walkable, everyHours: number): Odds[] {
  const sampled = sampleOutages({
    system,
    record,
    startKwh,
    lengths: LENGTHS,
    everyHours,
    seasonMonths: seasonMonths(months),
    untilFailure: true,
  });
  return sampled.map((one) => ({
    hours: one.hours,
    year: one.all?.share ?? 0,
    months: one.months.map((month) => month?.share ?? null),
    season: one.season?.share ?? 0,
    standardError: one.season?.standardError ?? null,
  }));
}

function systemOf(route: Route): WalkSystem {
  const { engine, fuel } = route;
  if (engine === null || fuel === null) throw new RangeError(`${route.kind} has no engine to walk`);
  const type = engineType(engine.sort);
  const line = fuelLine({
    ratedKw: engine.siteKw,
    fullLoadEfficiency: type.efficiency,
    noLoadRatio: type.noLoadRatio,
    kwhPerUnit: fuelHeatKwh(fuel.fuel as EngineFuel).lowerKwh,
  });
  const atHand = fuel.atHand === null ? Infinity : fuel.atHand.value;
  const inverterKw = (route.power?.continuousWatts ?? 0) / 1000;
  const battery =
    route.usableKwh === null ? null : { capKwh: route.usableKwh, limits: limitsOf(inverterKw) };
  return {
    battery,
    vehicle: null,
    ladder: [],
    engine: {
      ratedKw: engine.siteKw,
      fuelLine: line,
      runsByHour: engine.runsByHour,
      fuelAtStart: atHand,
      refill: 0,
      refillEveryHours: Infinity,
      tankSize: atHand,
    },
  };
}
