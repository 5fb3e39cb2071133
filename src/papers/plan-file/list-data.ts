import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { round } from './figure-data';
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
    route: line.route === null ? 'nothing bought' : routeData(home, line.route, words),
  }));
}
