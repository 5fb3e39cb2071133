import type { MoneyRange } from '../../bill/lifecycle/money-range';
import { shown } from '../../quantity/shown';

/** Whole dollars, as every figure in dollars is shown. */
export const usd = (value: number): string => shown(value, '$');

/** "$900 to $2,600", or one amount where both ends are the same. */
export function range({ low, high }: MoneyRange): string {
  return usd(low) === usd(high) ? usd(low) : `${usd(low)} to ${usd(high)}`;
}
