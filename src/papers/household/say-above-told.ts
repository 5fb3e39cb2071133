import type { Home } from '../../home/home';
import { formatQuantity } from '../../quantity/format-quantity';
import { budgetUsd } from '../../routes/budget';
import type { Route } from '../../routes/route';

/** By how much the likely price is above what was told, with a comma before it; empty where it is not, or nothing was told. */
export function sayAboveTold(home: Home, { costUsd }: Pick<Route, 'costUsd'>): string {
  const told = budgetUsd(home);
  if (told === null || costUsd.value <= told) return '';
  const usd = (dollars: number) => formatQuantity(Math.round(dollars), '$');
  return `, ${usd(costUsd.value - told)} above the ${usd(told)} you told us`;
}
