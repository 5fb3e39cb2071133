import type { Home } from '../home/home';

/**
 * What the household told us it can spend, $: what it has now and what it could add over two years, added up. A part
 * nobody told counts as nothing. Null: neither was told, so money sets no limit and the plan says so.
 */
export function budgetUsd({ facts }: Home): number | null {
  const ids = ['budget-now', 'budget-later'] as const;
  const told = ids.filter((id) => facts.told(id));
  if (told.length === 0) return null;
  return told.reduce((sum, id) => sum + (facts.number(id) ?? 0), 0);
}

/** Of what was told, the part that could be added only over two years, $; 0 where none was told. */
export function laterUsd({ facts }: Home): number {
  return facts.told('budget-later') ? (facts.number('budget-later') ?? 0) : 0;
}

/** Whether a price may be paid: at or below what was told, or nothing was told. */
export function withinBudgetUsd(home: Home, usd: number): boolean {
  const budget = budgetUsd(home);
  return budget === null || usd <= budget;
}
