import {
  type MoneyOfRoute,
  type PlanMoney,
  REAL_RATE,
  STUDY_YEARS,
} from '../../../plan/money/plan-money';
import { carriesAll } from '../../../plan/money/ridden';
import type { Words } from '../../../words/words';
import { table } from '../../markdown/table';

/** The routes over their life in one table, and how it was counted. */
export function saySideBySide({ routes, outageHours }: PlanMoney, words: Words): string[] {
  const say = words.household.sideBySide;
  return [
    table(
      say.columns,
      routes.map((route) => row(route, words)),
    ),
    say.counted({
      years: STUDY_YEARS,
      realRate: REAL_RATE,
      outageHours: outageHours.ordinary + outageHours.major,
    }),
    say.anOutageHour,
  ];
}

function row(route: MoneyOfRoute, words: Words): string[] {
  const say = words.household.sideBySide;
  const { firstCost, costPerYear, byCase } = route.money;
  const { savings, simplePayback } = byCase.likely;
  return [
    words.routeTitle(route.called),
    say.begins(words.dollarRange(firstCost), route.incentives > 0),
    savings > 0 ? words.usd(route.between?.savings ?? 0) : say.savesNothing,
    words.dollarRange(costPerYear),
    say.payback(simplePayback, STUDY_YEARS),
    outageHour(route, words),
    say.life(route.lifeYears),
    words.usd(route.upkeepPerYear),
    words.noise(route.noise),
    say.wait(route.leadWeeks),
  ];
}

function outageHour({ money, ridden }: MoneyOfRoute, words: Words): string {
  return money.perOutageHour === null
    ? words.household.sideBySide.noOutageHour(ridden, carriesAll(ridden))
    : words.usd(money.perOutageHour.likely);
}
