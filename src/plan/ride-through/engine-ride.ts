import type { Home, Season } from '../../home/home';
import type { World } from '../../home/world';
import type { Failure } from '../../outage/walk/failure';
import { type SampledOdds, sampleOutages } from '../../outage/walk/sampled-odds';
import type { WalkSystem } from '../../outage/walk/system';
import { fuelLine } from '../../physics/engine-fuel';
import { limitsOf, monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { type EngineFuel, engineType, fuelHeatKwh } from '../../tables/fuels';
import { LENGTHS, type Odds, type RouteRide } from './ride-through';
import { loadsIn } from './route-loads';

/** Start hours walked: one in 185, so that every hour of the day comes up. */
export const WALK_EVERY_HOURS = 185;

const failureWords: Readonly<Record<Failure, string>> = {
  'battery-empty': 'the battery runs empty',
  'power-limit': 'the loads together are more than the source gives',
  'fuel-gone': 'the fuel runs out',
  'engine-off': 'the engine is off by its timetable',
  'vehicle-gone': 'the vehicle has given what it may',
  'no-source': 'nothing feeds it',
};

/** Odds of an engine route, walked hour by hour from a sample of start hours: fuel depends on the time since the start. */
export function engineRide(
  home: Home,
  world: World,
  route: Route,
  season: Season,
): Omit<RouteRide, 'neighbours'> {
  const loadKw = world.loadKw(loadsIn(home, route, 'must') ?? []);
  const record = { loadsKw: [loadKw], solarKw: new Float64Array(loadKw.length) };
  const sampled = sampleOutages({
    system: systemOf(route),
    record,
    startKwh: route.usableKwh ?? 0,
    lengths: LENGTHS,
    everyHours: WALK_EVERY_HOURS,
    untilFailure: true,
  });
  const starts = Math.ceil(loadKw.length / WALK_EVERY_HOURS);
  return {
    kind: route.kind,
    title: route.title,
    basis: `a sample: ${starts.toLocaleString('en-US')} start hours of ${world.years} drawn years, one in ${WALK_EVERY_HOURS}, with the standard error beside`,
    odds: { must: sampled.map((one) => oddsOf(one, season)) },
    fromHalfFull: null,
    chargeAtStart: null,
    keepByMonth: null,
    unservedKwh: null,
    failsFirst: failsFirst(sampled, route.fuel?.atHand === null),
    badCase: null,
  };
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

function oddsOf(sampled: SampledOdds, season: Season): Odds {
  const { firstMonth, months } = monthsOf[season];
  const own = Array.from(
    { length: months },
    (_, i) => sampled.months[(firstMonth + i) % 12]?.share ?? 0,
  );
  return {
    hours: sampled.hours,
    year: sampled.all?.share ?? 0,
    months: sampled.months.map((month) => month?.share ?? null),
    season: own.reduce((sum, share) => sum + share, 0) / own.length,
    standardError: sampled.all?.standardError ?? null,
  };
}

function failsFirst(sampled: readonly SampledOdds[], piped: boolean): string {
  const longest = sampled.at(-1)!;
  const [most] = Object.entries(longest.failures).sort(([, a], [, b]) => b - a);
  if (most !== undefined) return `first, ${failureWords[most[0] as Failure]}`;
  return piped
    ? 'nothing fails within two weeks while the gas flows and the engine is kept in oil'
    : 'nothing fails within two weeks';
}
