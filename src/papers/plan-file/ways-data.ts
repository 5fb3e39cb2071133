import type { Measure } from '../../home/measures/measures-of';
import type { Plan } from '../../plan/plan';
import type { DayOfCase } from '../../plan/ways/days-of-case';
import type { InWay } from '../../plan/ways/route-in-ways';
import type { Profile } from '../../plan/ways/ways-of-living';
import type { Words } from '../../words/words';
import { figureData, round } from './figure-data';
import { namedLoad, namedLoads } from './named-load';
import type { PlanData } from './plan-schema';

/** Need less first, and the two ways of living. */
export function waysData({ home, waysOfLiving }: Plan, words: Words): PlanData['waysOfLiving'] {
  const { season, usual, thrifty, thriftyUsd, turns, measures, routes, days } = waysOfLiving;
  return {
    season,
    usual: profileData(usual, words),
    thrifty: profileData(thrifty, words),
    thriftyCost: figureData(thriftyUsd, words),
    turns: turns.map(({ load, hours }) => ({
      load: namedLoad(words, home, load),
      hours: hours.map(([from, until]): [number, number] => [from, until]),
    })),
    days:
      days === null
        ? ('alike' as const)
        : { usual: days.usual.map(dayData), thrifty: days.thrifty.map(dayData) },
    measures: measures.map((one) => measureData(one, home, words)),
    routes: routes.map(({ kind, sizedFor, storedGal, restsThriftily, ...ways }) => ({
      route: kind,
      sizedFor,
      gallonsCounted: storedGal,
      ...(restsThriftily && { thriftilyOnlyWhileOn: true as const }),
      usual: inWayData(ways.usual),
      thrifty: inWayData(ways.thrifty),
    })),
  };
}

function profileData({ kwhPerDay, runningWatts, startVa, wattsByHour }: Profile, words: Words) {
  return {
    energy: figureData(kwhPerDay, words),
    running: figureData(runningWatts, words),
    starting: figureData(startVa, words),
    wattsByHour: wattsByHour.map(round),
  };
}

const dayData = ({ afterHours, servedKwh, chargeKwh, fuelLeft, stoppedAfter }: DayOfCase) => ({
  afterHours,
  servedKwh: round(servedKwh),
  chargeKwh: round(chargeKwh),
  gallonsLeft: fuelLeft === null ? null : round(fuelLeft),
  stoppedAfter,
});

function inWayData({ share, carefulShare, hours, reaches }: InWay) {
  return {
    odds: round(share),
    carefulOdds: round(carefulShare),
    hours:
      hours === null
        ? ('not counted' as const)
        : { likely: round(hours.likely), careful: round(hours.careful) },
    reachesGoal: reaches,
  };
}

const scopes = {
  must: 'must run',
  good: 'must run and good to have',
  all: 'everything',
} as const;

function measureData(one: Measure, home: Plan['home'], words: Words) {
  const { id, use, saves, loads, costUsd, who, notWhere, gallons, setF } = one;
  const { does, gives } = words.measure(id);
  return {
    id,
    use,
    does,
    gives,
    savesOf: scopes[saves.of],
    season: saves.season,
    savesWatts: round(saves.runningWatts),
    savesStartVa: round(saves.startVa),
    savesKwhPerDay: round(saves.kwhPerDay),
    savesPackKwhPerDay: round(saves.packKwhPerDay),
    loads: namedLoads(words, home, loads),
    cost: figureData(costUsd, words),
    who: words.whoMay(who),
    notWhere: notWhere.map(words.notWhere),
    gallons,
    setF,
  };
}
