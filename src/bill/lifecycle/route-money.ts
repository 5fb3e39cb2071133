import { type CashFlow, netPresentValue, type RatesOfReturn, ratesOfReturn } from './cash-flow';
import type { CostPart } from './cost-part';
import { capitalRecovery } from './factors';
import { replacementYears, straightLineResidual } from './life-cycle-cost';
import { addRanges, type Case, cases, type MoneyRange, nothing, rangeOf } from './money-range';
import { type Payback, payback } from './payback';

export interface RouteMoneyInput {
  readonly parts: readonly CostPart[];
  /** What someone told the household it gets back, $; none unless asked and answered. */
  readonly incentives?: number;
  /** Fuel a year at today's prices, $. */
  readonly fuelPerYear?: MoneyRange;
  /** Off the bill in the first year at today's prices, $, and the share lost each year to fade. */
  readonly savingsPerYear?: MoneyRange;
  readonly fadePerYear?: number;
  /** Study period, years, and rates a year above inflation. */
  readonly years: number;
  readonly rate: number;
  readonly energyEscalation?: number;
  /** Hours a year the home is without power and this route carries it, ordinary and major events apart. */
  readonly hoursRidden?: { readonly ordinary: number; readonly major: number };
  /** kWh a year it delivers in outages. */
  readonly backupKwhPerYear?: number;
}

export interface CaseMoney {
  /** $ at the end of each year from 0, against doing nothing. */
  readonly flow: CashFlow;
  /** Present value of all costs, and of all that comes off the bill, $. */
  readonly costs: number;
  readonly savings: number;
  readonly simplePayback: Payback;
  readonly discountedPayback: Payback;
  readonly rates: RatesOfReturn;
}

export interface RouteMoney {
  readonly firstCost: MoneyRange;
  /** Life-cycle cost of the route, $ of today, before savings. */
  readonly lifeCycleCost: MoneyRange;
  /** $ of today against doing nothing; below zero is what the safety costs. */
  readonly netPresentValue: MoneyRange;
  /** Level cost a year after savings, $; below zero it earns. */
  readonly costPerYear: MoneyRange;
  /** Cost a year over the expected hours ridden through; null when no hours are expected. */
  readonly perOutageHour: MoneyRange | null;
  readonly perOrdinaryHour: MoneyRange | null;
  readonly perBackupKwh: MoneyRange | null;
  readonly byCase: Readonly<Record<Case, CaseMoney>>;
}

/**
 * What a route costs and saves over its life against doing nothing, low, likely and high. Real dollars, year ends.
 * Cost per year = (PV costs - PV savings) x UCR. The method is that of life-cycle-cost.ts (NIST Handbook 135).
 */
export function routeMoney(input: RouteMoneyInput): RouteMoney {
  const { years, rate } = input;
  if (!(years >= 1)) throw new RangeError(`a study period of ${years} years`);
  const byCase = Object.fromEntries(cases.map((at) => [at, caseMoney(input, at)])) as Record<
    Case,
    CaseMoney
  >;
  const net = (inCase: Case) => byCase[inCase].savings - byCase[inCase].costs;
  const level = capitalRecovery({ rate, years });
  const per = (amount: number | undefined) =>
    amount !== undefined && amount > 0 ? rangeOf((at) => (-net(at) * level) / amount) : null;
  const hours = input.hoursRidden;
  const incentives = input.incentives ?? 0;
  const bought = addRanges(input.parts.map((p) => p.cost));
  return {
    firstCost: rangeOf((at) => Math.max(0, bought[at] - incentives)),
    lifeCycleCost: rangeOf((at) => byCase[at].costs),
    netPresentValue: rangeOf(net),
    costPerYear: rangeOf((at) => -net(at) * level),
    perOutageHour: per(hours && hours.ordinary + hours.major),
    perOrdinaryHour: per(hours?.ordinary),
    perBackupKwh: per(input.backupKwhPerYear),
    byCase,
  };
}

/** In the low case costs are at their low end and savings at their high end; in the high case the other way. */
function caseMoney(input: RouteMoneyInput, inCase: Case): CaseMoney {
  const { parts, years, rate, energyEscalation = 0, fadePerYear = 0 } = input;
  const opposite: Case = inCase === 'low' ? 'high' : inCase === 'high' ? 'low' : 'likely';
  const fuel = (input.fuelPerYear ?? nothing)[inCase];
  const saved = (input.savingsPerYear ?? nothing)[opposite];
  const costs = new Array<number>(years + 1).fill(0);
  const savings = new Array<number>(years + 1).fill(0);
  const bought = parts.reduce((sum, part) => sum + part.cost[inCase], 0);
  costs[0] = Math.max(0, bought - (input.incentives ?? 0));
  for (const part of parts) addPart(costs, part, { at: inCase, years });
  for (let t = 1; t <= years; t++) {
    const rise = (1 + energyEscalation) ** t;
    costs[t] = costs[t]! + fuel * rise;
    savings[t] = saved * rise * (1 - fadePerYear) ** (t - 1);
  }
  const flow = costs.map((cost, t) => savings[t]! - cost);
  return {
    flow,
    costs: netPresentValue(costs, rate),
    savings: netPresentValue(savings, rate),
    simplePayback: payback(flow),
    discountedPayback: payback(flow, rate),
    rates: ratesOfReturn(flow),
  };
}

/** Upkeep each year, replacement at the end of each life, and what is left at the end taken off. */
function addPart(
  costs: number[],
  part: CostPart,
  { at, years }: { at: Case; years: number },
): void {
  for (let t = 1; t <= years; t++) costs[t] = costs[t]! + part.upkeepPerYear[at];
  if (part.lifeYears === null) return;
  const of = { cost: part.cost[at], lifeYears: part.lifeYears, years };
  for (const year of replacementYears(of)) costs[year] = costs[year]! + of.cost;
  costs[years] = costs[years]! - straightLineResidual(of);
}
