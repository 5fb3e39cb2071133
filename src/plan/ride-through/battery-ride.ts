import { type Odds, SCOPES, type Scope } from '../../advice/ride/odds';
import { loadsIn } from '../../advice/ride/route-loads';
import { type Fed, storeLimits } from '../../advice/ride/walk-system';
import { mustWalkable, type Walkable } from '../../advice/ride/walkable';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { chargeToKeep } from '../../outage/charge-to-keep';
import { type ChargeNeeded, chargeForEveryStart } from '../../outage/every-start';
import { hoursSurvived } from '../../outage/hours-survived';
import { type NetEnergy, netEnergy } from '../../outage/net-energy';
import { seasonMonths } from '../../outage/season';
import { shareOfSeason } from '../../outage/season-starts';
import { borrowHours, giveBack } from '../../outage/spare-hours';
import { unservedByMonth } from '../../outage/unserved-by-month';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import { failingOf, failsFirst } from './failing';
import { goalWalks } from './goal-walks';
import { hardCase } from './hard-case';
import { lengthsFor } from './lengths';
import { passedOdds } from './passed-odds';
import type { Ride } from './ride-through';

/** Odds, charge and bad case of a battery route, from every hour an outage could start in the drawn years. */
export function batteryRide(home: Home, drawn: SyntheticYears, route: Route, season: Season): Ride {
  const capKwh = route.usableKwh ?? 0;
  const goal = Math.round(home.goalHours.value);
  const odds: Partial<Record<Scope, Odds[]>> = {};
  const mustLoads = loadsIn(home, route, 'must') ?? [];
  const must = energyOf(drawn, route, { loads: mustLoads, season });
  if (mustLoads.length > 0) odds.must = oddsOf(must, capKwh, season, lengthsFor(goal));
  for (const scope of SCOPES) {
    const found = scope === 'must' ? null : batteryOdds(home, drawn, route, { scope, season });
    if (found !== null) odds[scope] = found;
  }
  const way = mustWalkable(home, drawn, route, season);
  const charge = chargeForEveryStart(must.netKwh, goal, capKwh);
  const [middle, most, worst] = chargeToKeep(charge, capKwh);
  const of = (months: readonly (number | null)[]) => hardestMonth(months, season);
  const ride: Ride = {
    kind: route.kind,
    called: route.called,
    basis: { code: 'battery', years: drawn.years },
    odds,
    fromHalfFull: shareOfSeason(
      monthsOf[season],
      must.netKwh.length,
      (s) => charge.unavoidableKwh[s]! + Math.max(0, charge.thresholdKwh[s]! - capKwh / 2) < 1e-9,
    ),
    chargeAtStart: {
      median: of(middle!.months),
      oneInTen: of(most!.months),
      worst: of(worst!.months),
    },
    keepByMonth: most!.months.map((kwh) => (kwh === null ? null : kwh / capKwh)),
    unservedKwh: unserved(must, capKwh, goal, charge, way),
    unservedHours: goalWalks(way, goal).unservedHours,
    failsFirst: failsFirst(failingOf(way), route),
    badCase: hardCase(home, drawn, route, season),
  };
  giveBack(must.netKwh, must.overloadKwh);
  return ride;
}

/** The odds of a battery route in one scope; null when it is the same as the scope before, or holds nothing. */
export function batteryOdds(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  { scope, season, years = drawn.years }: { scope: Scope; season: Season; years?: number },
): Odds[] | null {
  const loads = loadsIn(home, route, scope);
  if (loads === null || loads.length === 0) return null;
  const hours = Math.min(years, drawn.years) * HOURS_PER_YEAR;
  const spare = { netKwh: borrowHours(hours), overloadKwh: borrowHours(hours) };
  const energy = netEnergy(
    {
      loadKw: drawn.loadKw(loads).subarray(0, hours),
      supplyKw: drawn.sunKw(route.solarKw ?? 0).subarray(0, hours),
      limits: storeLimits(route, { loads, season }),
    },
    spare,
  );
  const lengths = lengthsFor(Math.round(home.goalHours.value));
  const odds = oddsOf(energy, route.usableKwh ?? 0, season, lengths);
  giveBack(spare.netKwh, spare.overloadKwh);
  return odds;
}

/** Net energy of every hour for a route's battery with these loads; to be given back when nothing reads it. */
export function energyOf(drawn: SyntheticYears, route: Route, fed: Fed) {
  const loadKw = drawn.loadKw(fed.loads);
  const energy = {
    netKwh: borrowHours(loadKw.length),
    overloadKwh: borrowHours(loadKw.length),
  };
  netEnergy(
    { loadKw, supplyKw: drawn.sunKw(route.solarKw ?? 0), limits: storeLimits(route, fed) },
    energy,
  );
  return energy;
}

function oddsOf(
  energy: NetEnergy,
  capKwh: number,
  season: Season,
  lengths: readonly number[],
): Odds[] {
  const limitHours = lengths.at(-1)!;
  const spare = borrowHours(energy.netKwh.length);
  const odds = passedOdds(hoursSurvived({ ...energy, capKwh, limitHours }, spare), lengths, season);
  giveBack(spare);
  return odds;
}

function hardestMonth(months: readonly (number | null)[], season: Season): number | null {
  const { firstMonth, months: count } = monthsOf[season];
  const own = Array.from({ length: count }, (_, i) => months[(firstMonth + i) % 12]!);
  return own.some((kwh) => kwh === null) ? null : Math.max(...own.map(Number));
}

function unserved(
  energy: NetEnergy,
  capKwh: number,
  goal: number,
  charge: ChargeNeeded,
  { months, system }: Walkable,
): number {
  const byMonth = unservedByMonth({
    ...energy,
    capKwh,
    startKwh: capKwh,
    outageHours: goal,
    dischargeEfficiency: system.battery!.limits.dischargeEfficiency,
    charge,
  });
  const own = seasonMonths(months).map((month) => byMonth.months[month] ?? 0);
  return own.reduce((sum, kwh) => sum + kwh, 0) / own.length;
}
