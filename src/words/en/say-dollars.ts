import type { MoneyRange } from '../../bill/lifecycle/money-range';

/** Whole dollars, from 1,000 to the nearest ten. */
export function usd(value: number): string {
  const step = Math.abs(value) >= 1000 ? 10 : 1;
  const rounded = Math.round(value / step) * step;
  return `${rounded < 0 ? '-' : ''}$${Math.abs(rounded).toLocaleString('en-US')}`;
}

/** "$900 to $2,600", or one amount where both ends are the same. */
export function range({ low, high }: MoneyRange): string {
  return usd(low) === usd(high) ? usd(low) : `${usd(low)} to ${usd(high)}`;
}
