import type { CaseMoney } from '../../../bill/lifecycle/route-money';

/** The rate of return of a route in words: a rate below zero is no return, and what saves nothing has none. */
export function sayRates({
  savings,
  flow,
  rates,
}: Pick<CaseMoney, 'savings' | 'flow' | 'rates'>): string {
  if (savings <= 0) return 'none: it takes nothing off the bill';
  const sum = flow.reduce((total, amount) => total + amount, 0);
  const above = rates.rates.filter((rate) => rate >= 0);
  if (sum < 0 || above.length === 0) return 'none: it never earns back what it costs';
  return `${above.map(percent).join(' or ')} a year above inflation`;
}

const percent = (rate: number) => `${(100 * rate).toFixed(1)} %`;
