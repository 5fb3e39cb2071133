import type { Line } from '../../advice/list/line';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { round } from './figure-data';
import { namedLoads } from './named-load';
import type { PlanData } from './plan-schema';
import { routeData } from './route-data';

/** What each dollar buys, each line with its whole route. */
export function listData({ advice, home }: Plan, words: Words): PlanData['list'] {
  return advice.list.map((line, i) => ({
    usd: round(line.usd),
    way: line.way,
    storedGal: line.storedGal === null ? 'no fuel in cans' : round(line.storedGal),
    lastsHours:
      line.hours === null
        ? 'no end foreseen'
        : { likely: round(line.hours.likely), careful: round(line.hours.careful) },
    odds: line.value.odds,
    devices: line.value.devices ?? 'no device that life hangs on',
    share: line.value.share,
    reachesGoal: line.reaches,
    withinBudget: line.withinBudget,
    advised: i === advice.advised,
    route:
      line.route === null
        ? 'nothing bought'
        : routeData(home, { route: line.route, notKnownYet: false }, words),
  }));
}

/** Ways on, each with the route it would take. */
export function waysOnData({ advice, home }: Plan, words: Words): PlanData['waysOn'] {
  const { waysOn } = advice;
  if (waysOn === null) return 'not needed';
  const { moreMoney, littleMore, shorterGoal, lessCarried, oneRoom, timetable } = waysOn;
  const of = ({ route, way, usd }: Line) => ({ route: route!.kind, way, usd: round(usd) });
  return {
    moreMoney:
      moreMoney === null
        ? 'leads nowhere'
        : { ...of(moreMoney.line), moreUsd: round(moreMoney.moreUsd) },
    littleMore:
      littleMore === null
        ? 'leads nowhere'
        : { ...of(littleMore.line), moreUsd: round(littleMore.moreUsd) },
    shorterGoal:
      shorterGoal === null
        ? 'leads nowhere'
        : { ...of(shorterGoal.line), hours: round(shorterGoal.hours) },
    lessCarried:
      lessCarried === null
        ? 'leads nowhere'
        : { ...of(lessCarried.line), without: namedLoads(words, home, lessCarried.without) },
    oneRoom:
      oneRoom === null
        ? 'leads nowhere'
        : {
            ...of(oneRoom.line),
            unitsUsd: round(oneRoom.unitsUsd),
            heats: oneRoom.heats,
            cools: oneRoom.cools,
            reachesGoal: oneRoom.line.reaches,
            doesItWithin: oneRoom.doesItWithin,
          },
    timetable:
      timetable === null
        ? 'leads nowhere'
        : {
            ...of(timetable.line),
            gallons: round(timetable.gallons),
            hours: round(timetable.hours),
            coldFoodWarms: timetable.coldFoodSafeHours !== null,
            roomCools: timetable.roomCools,
            roomWarms: timetable.roomWarms,
          },
  };
}
