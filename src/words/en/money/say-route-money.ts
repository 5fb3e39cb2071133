import type { RouteMoney } from '../../../bill/lifecycle/route-money';
import { range, usd } from '../say-dollars';
import { sayPayback } from './say-payback';

/** A route's money in sentences for a first-time buyer; `years` is the study period. */
export function sayRouteMoney(money: RouteMoney, { years }: { years: number }): string[] {
  const { costPerYear, byCase } = money;
  const says = [
    `It costs ${range(money.firstCost)} to begin with.`,
    costPerYear.likely > 0
      ? `Over ${years} years, after what it takes off the bill, it costs about ${usd(costPerYear.likely)} a year (${range(costPerYear)}). That is the price of the safety.`
      : `Over ${years} years it takes about ${usd(-costPerYear.likely)} a year more off the bill than it costs.`,
    `Paid back: ${sayPayback(byCase.likely.simplePayback, years)}.`,
  ];
  const hour = money.perOutageHour;
  if (hour && hour.likely > 0) {
    says.push(
      `That is about ${usd(hour.likely)} for each hour of outage it is likely to carry you through.`,
    );
  }
  return says;
}
