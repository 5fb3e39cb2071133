import type { Payback } from '../../../bill/lifecycle/payback';
import type { MoneyOfRoute } from '../../../plan/money/plan-money';
import { formatQuantity } from '../../../quantity/format-quantity';
import { sayPayback } from '../money/say-payback';

/** The routes over their life in one table. */
export const sideBySide = {
  columns: [
    'Route',
    'To begin with',
    'Off the bill a year',
    'Cost a year',
    'Paid back',
    'An outage hour',
    'Life',
    'Upkeep a year',
    'Noise',
    'Wait',
  ],
  counted: (given: { years: number; realRate: number; outageHours: number }) =>
    `Counted over ${given.years} years in today's dollars at ${100 * given.realRate} % a year above inflation: purchase, work, permit, fuel, upkeep, replacement and what is left at the end, less what comes off the bill. Doing nothing costs nothing here, and leaves about ${formatQuantity(given.outageHours, 'h')} without power in an average year.`,
  anOutageHour:
    'An outage hour: the cost a year over the hours a year in which all that must run is carried. Outages come in all lengths, most of them short and a few very long; of each, no more is counted than the route lasts from full in the hardest season you asked for. A route that carries a part of what must run has no such figure.',
  begins: (range: string, moneyBack: boolean) => `${range}${moneyBack ? ' after money back' : ''}`,
  savesNothing: 'nothing',
  payback: (found: Payback, years: number) => sayPayback(found, years),
  life: (years: number | null) =>
    years === null ? 'does not wear' : formatQuantity(years, 'years'),
  /** From the order to the day it works; what is there already is waited for by nobody. */
  wait({ low, high }: MoneyOfRoute['leadWeeks']): string {
    if (high === 0) return 'none';
    const weeks = formatQuantity(high, 'count');
    return low === high ? `${weeks} weeks` : `${formatQuantity(low, 'count')} to ${weeks} weeks`;
  },
  /** Why a route has no cost for each hour of outage. */
  noOutageHour({ carried, of }: MoneyOfRoute['ridden'], carriesAll: boolean): string {
    if (carried === 0) return 'carries none';
    return carriesAll ? 'none expected' : `carries ${carried} of ${of}`;
  },
};
