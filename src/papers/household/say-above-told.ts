import type { Home } from '../../home/home';
import { budgetUsd } from '../../routes/budget';
import type { Route } from '../../routes/route';
import type { Words } from '../../words/words';

/** By how much the likely price is above what was told; empty where it is not, or nothing was told. */
export function sayAboveTold(
  home: Home,
  { costUsd }: Pick<Route, 'costUsd'>,
  words: Words,
): string {
  const told = budgetUsd(home);
  return told === null || costUsd.value <= told
    ? ''
    : words.household.aboveTold(costUsd.value, told);
}
