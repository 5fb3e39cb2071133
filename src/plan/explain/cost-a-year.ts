import type { CostPart } from '../../bill/lifecycle/cost-part';
import {
  capitalRecovery,
  singlePresentValue,
  uniformPresentValue,
} from '../../bill/lifecycle/factors';
import { replacementYears, straightLineResidual } from '../../bill/lifecycle/life-cycle-cost';
import type { Case } from '../../bill/lifecycle/money-range';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure, type Source } from '../../quantity/figure';
import { addFigures, operand, timesFigure, worked } from '../../quantity/figure-arithmetic';
import type { StepName } from '../../quantity/step-name';
import type { Route } from '../../routes/route';
import { type MoneyOfRoute, REAL_RATE, STUDY_YEARS } from '../money/plan-money';
import type { Plan } from '../plan';

const STUDY = { rate: REAL_RATE, years: STUDY_YEARS };
const USD = { unit: '$' } as const;
const FACTOR: Source = {
  kind: 'table',
  cite: [{ of: 'factors-of-present-value', ref: 'NIST Handbook 135' }],
};

const own = ({ money, advice }: Plan) =>
  money.routes.find(({ kind }) => kind === advice.route.kind);

/** What the route advised costs over the years of the study, in dollars of today; null where nothing is counted. */
export function costOverYears(plan: Plan): Figure | null {
  const route = own(plan);
  if (route === undefined) return null;
  return inDollars(
    route.money.lifeCycleCost,
    () => costSteps(route, plan, 'likely'),
    (end) => costSteps(route, plan, end),
  );
}

/** The same after what comes off the bill, as a level sum a year. */
export function costAYear(plan: Plan): Figure | null {
  const route = own(plan);
  const costs = costOverYears(plan);
  if (route === undefined || costs === null) return null;
  return inDollars(
    route.money.costPerYear,
    () => levelled(costs, route, 'likely'),
    (end) => levelled(atEnd(costs, end), route, end),
  );
}

/** A sum with the steps it and its ends are worked out in. */
function inDollars(
  { low, likely: value, high }: { low: number; likely: number; high: number },
  as: () => Figure,
  endAs: (end: 'low' | 'high') => Figure,
): Figure {
  return figure({ value, low, high, ...USD, source: { kind: 'formula' }, as, endAs });
}

/** Costs less what comes off the bill in the same case, spread evenly over the years. */
function levelled(costs: Figure, { money }: MoneyOfRoute, at: Case): Figure {
  const saved = operand(money.byCase[at].savings, '$', 'saved-today');
  const net = worked(
    { by: 'difference', of: [named(costs, 'costs-today'), saved] },
    { ...USD, is: 'costs-less-savings' },
  );
  const level = operand(capitalRecovery(STUDY), 'count', 'level-factor', FACTOR);
  return timesFigure(net, level, USD);
}

/** What a battery takes off the bill of an ordinary year; null where it does nothing there. */
export function savingsAYear(plan: Plan): Figure | null {
  const between = own(plan)?.between ?? null;
  if (between === null) return null;
  const { before, after, savings } = between;
  const bill = (dollars: number, is: StepName) => operand(dollars, '$', is);
  const steps = () =>
    worked(
      {
        by: 'difference',
        of: [bill(before.total, 'bill-before'), bill(after.total, 'bill-after')],
      },
      USD,
    );
  return figure({ value: savings, ...USD, source: { kind: 'formula' }, as: steps });
}

function costSteps(
  { parts, money, incentives, ridden }: MoneyOfRoute,
  { advice }: Plan,
  at: Case,
): Figure {
  const prices = parts.map((part) => priceOf(part, advice.route, at));
  const first = firstCost(prices, money.firstCost[at], incentives);
  const everyYear = operand(uniformPresentValue(STUDY), 'count', 'every-year-factor', FACTOR);
  const upkeep = yearly(
    parts.reduce((sum, part) => sum + part.upkeepPerYear[at], 0),
    'upkeep-a-year',
    everyYear,
  );
  const fuel = yearly(ridden.fuelPerYear[at], 'fuel-a-year', everyYear);
  const costs = addFigures(
    [first, ...upkeep, ...fuel, ...parts.flatMap((part, i) => boughtAgain(part, prices[i]!))],
    {
      ...USD,
      is: 'all-costs',
    },
  );
  const left = parts.flatMap((part, i) => leftOver(part, prices[i]!));
  if (left.length === 0) return costs;
  const rest = addFigures(left, { ...USD, is: 'left-at-the-end' });
  return worked({ by: 'difference', of: [costs, rest] }, USD);
}

/** A part at the price of the plan, or at the household's own, likely or at one end. */
function priceOf(part: CostPart, route: Route, at: Case): Figure {
  const price = pricedIn(part, route);
  return at === 'likely' ? price : atEnd(price, at);
}

function pricedIn({ called, equipmentClass, cost, quoted }: CostPart, { parts }: Route): Figure {
  const own = parts.find(
    (part) => part.called.code === called.code && part.costUsd.value === cost.likely,
  );
  const { low, likely: value, high } = cost;
  if (own !== undefined && own.costUsd.low === low && own.costUsd.high === high) return own.costUsd;
  const name = { code: 'equipment', class: equipmentClass } as const;
  const source = { kind: quoted ? 'told' : 'formula' } as const;
  const steps = own === undefined ? {} : { as: () => own.costUsd };
  return figure({ value, low, high, ...USD, name, source, ...steps });
}

/** Parts less what somebody promised to pay back. */
function firstCost(prices: readonly Figure[], usd: number, incentives: number): Figure {
  const all = addFigures(prices, { ...USD, is: 'first-cost' });
  if (incentives === 0) return all;
  const back = operand(incentives, '$', 'money-back');
  const net = worked({ by: 'difference', of: [all, back] }, { ...USD, is: 'first-cost' });
  if (net.value === usd) return net;
  const none = operand(0, '$', 'all-back');
  return worked({ by: 'largest', of: [net, none] }, { ...USD, is: 'first-cost' });
}

function yearly(usd: number, is: StepName, factor: Figure): Figure[] {
  if (usd === 0) return [];
  return [timesFigure(operand(usd, '$', is), factor, { ...USD, is: 'worth-today' })];
}

/** Bought again when its life is over, each time at what that is worth today. */
function boughtAgain({ lifeYears }: CostPart, price: Figure): Figure[] {
  if (lifeYears === null || price.value === 0) return [];
  const years = replacementYears({ lifeYears, years: STUDY_YEARS });
  return years.map((year) => today(price, year, 'bought-again'));
}

/** What is left of its life at the end of the study. */
function leftOver({ lifeYears }: CostPart, price: Figure): Figure[] {
  if (lifeYears === null || price.value === 0) return [];
  const share = straightLineResidual({ cost: 1, lifeYears, years: STUDY_YEARS });
  if (share === 0) return [];
  const left = operand(share, 'count', { code: 'life-left', lifeYears, years: STUDY_YEARS });
  const then = timesFigure(price, left, { ...USD, is: 'left-then' });
  return [today(then, STUDY_YEARS, 'left-of-its-life')];
}

function today(then: Figure, years: number, is: StepName): Figure {
  const share = singlePresentValue({ rate: REAL_RATE, years });
  const factor = operand(share, 'count', { code: 'dollar-in-years', years }, FACTOR);
  return timesFigure(then, factor, { ...USD, is });
}

/** The same figure under the name it has in a longer sum. */
function named(one: Figure, is: StepName): Figure {
  const { value, unit, source } = one;
  return figure({ value, unit, source, is, as: () => one });
}
