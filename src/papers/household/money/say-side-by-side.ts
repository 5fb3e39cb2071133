import { sayPayback } from '../../../bill/lifecycle/payback';
import {
  type MoneyOfRoute,
  type PlanMoney,
  REAL_RATE,
  STUDY_YEARS,
} from '../../../plan/money/plan-money';
import { carriesAll } from '../../../plan/money/ridden';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';

/** The routes over their life in one table, and how it was counted. */
export function saySideBySide(money: PlanMoney, words: Words): string[] {
  const { ordinary, major } = money.outageHours;
  return [
    [
      '| Route | To begin with | Off the bill a year | Cost a year | Paid back | An outage hour | Life | Upkeep a year | Noise | Wait |',
      '|---|---|---|---|---|---|---|---|---|---|',
      ...money.routes.map((route) => row(route, words)),
    ].join('\n'),
    `Counted over ${STUDY_YEARS} years in today's dollars at ${100 * REAL_RATE} % a year above inflation: purchase, work, permit, fuel, upkeep, replacement and what is left at the end, less what comes off the bill. Doing nothing costs nothing here, and leaves about ${formatQuantity(ordinary + major, 'h')} without power in an average year.`,
    `An outage hour: the cost a year over the hours a year in which all that must run is carried. Outages come in all lengths, most of them short and a few very long; of each, no more is counted than the route lasts from full in the hardest season you asked for. A route that carries a part of what must run has no such figure.`,
  ];
}

function row(route: MoneyOfRoute, words: Words): string {
  const { money } = route;
  const saves =
    money.byCase.likely.savings > 0 ? words.usd(route.between?.savings ?? 0) : 'nothing';
  const cells = [
    route.title,
    words.dollarRange(money.firstCost),
    saves,
    words.dollarRange(money.costPerYear),
    sayPayback(money.byCase.likely.simplePayback, STUDY_YEARS),
    outageHour(route, words),
    route.lifeYears === null ? 'does not wear' : formatQuantity(route.lifeYears, 'years'),
    words.usd(route.upkeepPerYear),
    route.noise,
    sayWait(route.leadWeeks),
  ];
  return `| ${cells.join(' | ')} |`;
}

/** From the order to the day it works; what is there already is waited for by nobody. */
export function sayWait({ low, high }: MoneyOfRoute['leadWeeks']): string {
  if (high === 0) return 'none';
  const weeks = formatQuantity(high, 'count');
  return low === high ? `${weeks} weeks` : `${formatQuantity(low, 'count')} to ${weeks} weeks`;
}

function outageHour({ money, ridden }: MoneyOfRoute, words: Words): string {
  if (money.perOutageHour !== null) return words.usd(money.perOutageHour.likely);
  return sayNoOutageHour(ridden);
}

/** Why a route has no cost for each hour of outage. */
export function sayNoOutageHour(ridden: MoneyOfRoute['ridden']): string {
  if (ridden.carried === 0) return 'carries none';
  return carriesAll(ridden) ? 'none expected' : `carries ${ridden.carried} of ${ridden.of}`;
}
