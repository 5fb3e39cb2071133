import type { Demand, Home, Load, Season } from '../../home/home';
import type { Figure } from '../../quantity/figure';
import type { Words } from '../../words/words';
import { figureData, round } from './figure-data';
import { namedLoad, namedLoads } from './named-load';
import type { PlanData } from './plan-schema';

/** How a rank is called. */
const ranks = { must: 'must keep running', good: 'good to have', wait: 'can wait' } as const;

export function loadData(load: Load, words: Words): PlanData['loads'][number] {
  return {
    id: load.id,
    name: words.called(load.called),
    rank: ranks[load.rank],
    lifeSupport: load.life,
    volts: load.volts,
    running: figureData(load.runningWatts, words),
    apparent: figureData(load.runningVa, words),
    startingCurrent:
      load.startAmps === null ? 'no motor to start' : figureData(load.startAmps, words),
    starting: load.startVa === null ? 'no motor to start' : figureData(load.startVa, words),
    energy: seasonData(load.kwhPerDay, words),
    shareByHour: load.shape.map((share) => round(share)),
    offInOutage: load.offInOutage,
    restsOn: [...load.restsOn],
  };
}

export function demandData(
  home: Home,
  demand: Demand,
  words: Words,
): PlanData['demand']['mustRun'] {
  return {
    running: figureData(demand.runningWatts, words),
    apparent: figureData(demand.runningVa, words),
    starting: figureData(demand.startVa, words),
    hardestStart:
      demand.hardestStart === null ? 'none' : namedLoad(words, home, demand.hardestStart),
    startsTogether: namedLoads(words, home, demand.startsTogether),
    energy: seasonData(demand.kwhPerDay, words),
    wattsByHour: {
      winter: demand.wattsByHour.winter.map(round),
      summer: demand.wattsByHour.summer.map(round),
      mild: demand.wattsByHour.mild.map(round),
    },
    needs240Volts: demand.needs240,
  };
}

function seasonData(given: Readonly<Record<Season, Figure>>, words: Words) {
  return {
    winter: figureData(given.winter, words),
    summer: figureData(given.summer, words),
    mild: figureData(given.mild, words),
  };
}
