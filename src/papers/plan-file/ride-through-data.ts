import type { Odds } from '../../advice/ride/odds';
import type { RouteRide } from '../../plan/ride-through/ride-through';
import type { RideThrough } from '../../plan/ride-through/ride-through-of';
import type { Words } from '../../words/words';
import type { PlanData } from './plan-schema';

type Data = PlanData['rideThrough'];

/** The ride-through as the plan file holds it. Shares are 0 to 1, rounded to a thousandth. */
export function rideThroughData(ride: RideThrough, words: Words): Data {
  return {
    season: ride.season,
    goalHours: ride.goalHours,
    routes: ride.routes.map((route) => routeData(route, words)),
    otherRoutes: ride.others.map(({ kind, odds, carries }) => ({
      kind,
      carriesOfMustRun: carries.things,
      oddsMustRun: odds.map(oddsData),
    })),
  };
}

function routeData(route: RouteRide, words: Words): Data['routes'][number] {
  return {
    kind: route.kind,
    basis: { code: route.basis.code, says: words.basis(route.basis) },
    carriesOfMustRun: route.carries.things,
    mustRunThings: route.carries.of,
    oddsMustRun: (route.odds.must ?? []).map(oddsData),
    oddsMustAndGood: (route.odds.good ?? []).map(oddsData),
    oddsEverything: (route.odds.all ?? []).map(oddsData),
    fromHalfFull: route.fromHalfFull === null ? 'not counted' : round(route.fromHalfFull),
    chargeAtStartKwh:
      route.chargeAtStart === null
        ? 'not counted'
        : {
            median: orNot(route.chargeAtStart.median),
            oneInTen: orNot(route.chargeAtStart.oneInTen),
            worst: orNot(route.chargeAtStart.worst),
          },
    keptForOutagesByMonth:
      route.keepByMonth === null ? 'not counted' : route.keepByMonth.map(orNot),
    carefulOddsOfGoal: round(route.carefulShare),
    onceCansAreFilled:
      route.onceStored === null
        ? 'no cans to fill'
        : {
            gallons: route.onceStored.gallons,
            odds: round(route.onceStored.share),
            carefulOdds: round(route.onceStored.carefulShare),
          },
    unservedKwh: round(route.unservedKwh),
    unservedHours: round(route.unservedHours),
    failsFirst: { code: route.failsFirst.code, says: words.failsFirst(route.failsFirst) },
    badCase:
      route.badCase === null
        ? 'not drawn'
        : {
            month: route.badCase.month + 1,
            hourOfDay: route.badCase.hourOfDay,
            endsAfterHours: route.badCase.endsAfter ?? 'ridden through',
            ...(route.badCase.storedGal !== undefined && {
              storedGal: round(route.badCase.storedGal),
            }),
            loadKw: route.badCase.hours.map((h) => round(h.loadKw)),
            servedKw: route.badCase.hours.map((h) => round(h.servedKw)),
            sunKw: route.badCase.hours.map((h) => round(h.sunKw)),
            chargeKwh: route.badCase.hours.map((h) => round(h.chargeKwh)),
            fuelLeft: route.badCase.hours.flatMap((h) =>
              h.fuelLeft === null ? [] : [round(h.fuelLeft)],
            ),
          },
    usedOtherwise: route.variants.map((v) => ({
      code: v.use.code,
      says: words.otherUse(v.use),
      odds: round(v.share),
      carefulOdds: round(v.carefulShare),
      standardError: v.standardError === null ? 'none' : round(v.standardError),
    })),
    neighbors: route.neighbors.map((n) => ({
      code: n.step.code,
      larger: n.step.larger,
      says: words.neighbor(n.step),
      nameplateKwh: n.nameplateKwh ?? 'no battery',
      solarKw: n.solarKw,
      odds: n.odds === null ? 'does not start or carry what must run' : round(n.odds),
      carefulOdds:
        n.carefulOdds === null ? 'does not start or carry what must run' : round(n.carefulOdds),
      ...(n.oddsOnceStored !== undefined && { oddsOnceCansAreFilled: round(n.oddsOnceStored) }),
      costUsd: Math.round(n.costUsd.value),
    })),
  };
}

function oddsData(odds: Odds): Data['routes'][number]['oddsMustRun'][number] {
  return {
    hours: odds.hours,
    season: round(odds.season),
    year: round(odds.year),
    months: odds.months.map(orNot),
    standardError: odds.standardError === null ? 'none' : round(odds.standardError),
  };
}

function orNot(value: number | null): number | 'full is not enough' {
  return value === null ? 'full is not enough' : round(value);
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
