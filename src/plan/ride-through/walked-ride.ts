import { type Odds, SCOPES, type Scope } from '../../advice/ride/odds';
import { loadsIn } from '../../advice/ride/route-loads';
import { mustWalkable, type Walkable, walkableOf } from '../../advice/ride/walkable';
import { walkedOdds } from '../../advice/ride/walked-odds';
import type { Home, Season } from '../../home/home';
import { vehicleOf } from '../../home/vehicle';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { generatorOdds } from '../../outage/generator-odds';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Route } from '../../routes/route';
import { failingOf, failsFirst } from './failing';
import { goalWalks } from './goal-walks';
import { hardCase } from './hard-case';
import { lengthsFor } from './lengths';
import { plainOdds } from './passed-odds';
import type { Basis, Ride } from './ride-through';

/**
 * Odds of a route whose store depends on the time since the start: a generator with its fuel, a vehicle that comes and
 * goes. A generator alone is counted from every start hour; with a battery, and a vehicle, from outages walked hour by hour.
 */
export function walkedRide(home: Home, drawn: SyntheticYears, route: Route, season: Season): Ride {
  const goal = Math.round(home.goalHours.value);
  const lengths = lengthsFor(goal);
  const odds: Partial<Record<Scope, Odds[]>> = {};
  for (const scope of SCOPES) {
    const loads = loadsIn(home, route, scope);
    if (loads === null || loads.length === 0) continue;
    odds[scope] = oddsOf(
      walkableOf(home, drawn, route, { classes: [loads], season }),
      lengths,
      season,
    );
  }
  const must = mustWalkable(home, drawn, route, season);
  const { unservedHours, unservedKwh } = goalWalks(must, goal);
  return {
    kind: route.kind,
    called: route.called,
    basis: basisOf(home, must, drawn.years),
    odds,
    fromHalfFull: null,
    chargeAtStart: null,
    keepByMonth: null,
    unservedKwh,
    unservedHours,
    failsFirst: failsFirst(failingOf(must), route),
    badCase: caseToDraw(home, drawn, route, season),
  };
}

/** On the fuel of today; where that is none by the careful count, once the cans are filled: an empty case shows nothing. */
function caseToDraw(home: Home, drawn: SyntheticYears, route: Route, season: Season) {
  const today = hardCase(home, drawn, route, season);
  const stored = today?.endsAfter === 0 ? onceStored(home, route) : null;
  const then = stored === null ? null : hardCase(home, drawn, stored.route, season);
  return then === null ? today : { ...then, storedGal: stored!.gallons };
}

function oddsOf(way: Walkable, lengths: readonly number[], season: Season): Odds[] {
  const { system, record } = way;
  if (!isGeneratorAlone(way)) return walkedOdds(way, lengths, SAMPLE_EVERY_HOURS);
  const alone = {
    loadKw: record.loadsKw[0]!,
    generator: system.generator!,
    limitHours: lengths.at(-1)!,
  };
  return plainOdds(generatorOdds(alone, lengths), season);
}

function isGeneratorAlone({ system: { generator, battery, vehicle } }: Walkable): boolean {
  return generator !== null && battery === null && vehicle === null;
}

function basisOf(home: Home, way: Walkable, years: number): Basis {
  const { generator, vehicle } = way.system;
  if (isGeneratorAlone(way)) return { code: 'generator', years };
  const starts = Math.ceil(way.record.solarKw.length / SAMPLE_EVERY_HOURS);
  const sample = { years, starts, everyHours: SAMPLE_EVERY_HOURS, burnsFuel: generator !== null };
  return vehicle === null
    ? { ...sample, code: 'generator-and-battery' }
    : { ...sample, code: 'vehicle', chargeShare: vehicleOf(home.facts)?.chargeShare ?? 0 };
}
