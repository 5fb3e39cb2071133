import type { MoneyRange } from './money-range';
import { sayPayback } from './payback';
import type { RouteMoney } from './route-money';

/** A route's money in sentences for a first-time buyer; `years` is the study period. */
export function sayRouteMoney(money: RouteMoney, { years }: { years: number }): string[] {
  const { costPerYear, byCase } = money;
  const says = [
    `It costs ${range(money.firstCost)} to begin with.`,
    costPerYear.likely > 0
      ? `Over ${years} years, after what it takes off the bill, it costs about ${whole(costPerYear.likely)} a year (${range(costPerYear)}). That is the price of the safety.`
      : `Over ${years} years it takes about ${whole(-costPerYear.likely)} a year more off the bill than it costs.`,
    `Paid back: ${sayPayback(byCase.likely.simplePayback, years)}.`,
  ];
  const hour = money.perOutageHour;
  if (hour && hour.likely > 0) {
    says.push(
      `That is about ${whole(hour.likely)} for each hour of outage it is likely to carry you through.`,
    );
  }
  return says;
}

const range = ({ low, high }: MoneyRange) =>
  whole(low) === whole(high) ? whole(low) : `${whole(low)} to ${whole(high)}`;

/** Dollars without cents; from 1,000 up to the nearest ten, since no range here is surer than that. */
function whole(value: number): string {
  const step = Math.abs(value) >= 1000 ? 10 : 1;
  const rounded = Math.round(value / step) * step;
  const digits = Math.abs(rounded).toLocaleString('en-US');
  return `${rounded < 0 ? '-' : ''}$${digits}`;
}
