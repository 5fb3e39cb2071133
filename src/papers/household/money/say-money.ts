import type { Tariff } from '../../../bill/tariff/tariff';
import type { Home } from '../../../home/home';
import type { RouteKind } from '../../../kinds/route-kind';
import { type MoneyOfRoute, type PlanMoney, STUDY_YEARS } from '../../../plan/money/plan-money';
import { carriesAll } from '../../../plan/money/ridden';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';
import { sayBetween, sayJulyBills } from './say-between';
import { sayReserve } from './say-reserve';
import { saySideBySide } from './say-side-by-side';

/** The section "Does it pay": routes side by side over their life, the bill, the reserve, and what is bought first. */
export function sayMoney(
  { money, home }: Pick<Plan, 'money' | 'home'>,
  advised: RouteKind,
  words: Words,
): string[] {
  const say = words.household.money;
  const own = money.routes.find((route) => route.kind === advised);
  return [
    `## ${say.title}`,
    sayAnswer(money, own, words),
    ...saySideBySide(money, words),
    ...(own === undefined
      ? []
      : [say.own(own, { years: STUDY_YEARS, carriesAll: carriesAll(own.ridden) })]),
    sayTariff(home, money, words),
    ...sayBetween(money, words),
    ...sayJulyBills(money, words),
    ...sayReserve(money, words),
    ...sayLosses(money, words),
    ...sayStages(money, words),
    money.incentiveNotes.map(words.incentive).join(' '),
    ...(money.oldPrices.length > 0
      ? [say.oldPrices, bullets(money.oldPrices.map(words.oldPrice))]
      : []),
  ];
}

function sayAnswer(money: PlanMoney, own: MoneyOfRoute | undefined, words: Words): string {
  const paying = money.routes.filter((route) => route.money.netPresentValue.likely > 0);
  const cost = own?.money.costPerYear.likely ?? 0;
  return words.household.money.answer(
    paying.map((route) => words.routeTitle(route.called)),
    cost > 0 ? cost : null,
  );
}

function sayTariff(home: Home, money: PlanMoney, words: Words): string {
  const say = words.household.money;
  const { tariff, billFit } = money;
  if (tariff === null) return say.offTheGrid;
  const fit = billFit === null ? '' : say.fits(billFit);
  return `${words.tariff(home, tariff)}${fit} ${words.use(money)}${goesByTheClock(tariff.tariff) ? say.oneClock : ''}`;
}

/** Where hours have prices of their own the clock matters, and the plan keeps to one clock. */
function goesByTheClock({ seasons, demand = [], export: sold }: Tariff): boolean {
  return (
    seasons.some(({ periods }) => periods.length > 1) ||
    demand.some(({ hours }) => hours !== undefined) ||
    sold.rule === 'hourly-credit'
  );
}

function sayLosses({ losses }: PlanMoney, words: Words): string[] {
  const sum = losses.reduce((total, loss) => total + loss.dollarsPerYear, 0);
  return sum <= 0 ? [] : [words.household.money.losses(losses, sum)];
}

function sayStages({ stages, carriesOver }: PlanMoney, words: Words): string[] {
  const say = words.household.money;
  const lines = stages.filter((stage) => stage.parts.length > 0).map(say.stage);
  if (lines.length === 0) return [];
  // Getting ready is one row of the table; a hundred dollars buys the first things of it.
  const first = stages[0]!.parts.length === 0 ? [say.firstThings] : [];
  return [
    say.stages,
    bullets([...first, ...lines, say.staysOfUse, ...words.carriesOver(carriesOver)]),
  ];
}
