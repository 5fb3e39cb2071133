import type { Home } from '../../home/home';
import type { Route } from '../../routes/route';
import type { TransferTime } from '../../routes/transfer-time';
import type { Words } from '../../words/words';
import { figureData, round } from './figure-data';
import { namedLoad, namedLoads } from './named-load';
import type { PlanData } from './plan-schema';
import { said } from './said';

type RouteData = PlanData['routes'][number];

export function routeData(
  home: Home,
  { route, notKnownYet }: { route: Route; notKnownYet: boolean },
  words: Words,
): RouteData {
  return {
    kind: route.kind,
    called: route.called,
    title: words.routeTitle(route.called),
    verdict: route.verdict,
    cannotBecause: said(route.stops, words.stop),
    notKnownYet,
    worksIf: said(route.ifs, words.routeIf),
    carries: namedLoads(words, home, route.carries),
    leavesOut: route.leavesOut.map(({ load, why, must }) => ({
      ...namedLoad(words, home, load),
      code: why.code,
      why: words.leftOut(why),
      must,
    })),
    power:
      route.power === null
        ? 'none'
        : {
            continuousWatts: round(route.power.continuousWatts),
            startVa: round(route.power.startVa),
            asksRunning: figureData(route.power.runningWatts, words),
            asksStarting: figureData(route.power.startDemandVa, words),
          },
    nameplateKwh: route.nameplateKwh === null ? 'none' : round(route.nameplateKwh),
    usableKwh: route.usableKwh === null ? 'none' : round(route.usableKwh),
    solarKw: route.solarKw === null ? 'none' : round(route.solarKw),
    sizeByOdds:
      route.sizeByOdds === null
        ? 'not sized by odds'
        : {
            nineOutagesInTenKwh: round(route.sizeByOdds.nineOutagesInTenKwh),
            nineYearsInTenKwh: round(route.sizeByOdds.nineYearsInTenKwh),
          },
    fuel:
      route.fuel === null
        ? 'none'
        : {
            fuel: route.fuel.fuel,
            perDay: figureData(route.fuel.perDay, words),
            atHand: route.fuel.atHand === null ? 'piped' : figureData(route.fuel.atHand, words),
          },
    gap: transferData(route.transferTime, words),
    lasts: words.howLong(route.lasting),
    lastsHours:
      route.lasting.hours === null ? 'no end foreseen' : figureData(route.lasting.hours, words),
    reachesGoal: route.lasting.reachesGoal,
    cost: figureData(route.costUsd, words),
    parts: route.parts.map((p) => ({
      code: p.called.code,
      name: words.part(p.called),
      cost: figureData(p.costUsd, words),
      year: p.year,
    })),
    notes: said(route.notes, words.routeNote),
  };
}

function transferData(time: TransferTime, words: Words): RouteData['gap'] {
  const { low, high } = time.seconds ?? { low: 'none' as const, high: 'none' as const };
  return { code: time.code, lowSeconds: low, highSeconds: high, says: words.transferTime(time) };
}
