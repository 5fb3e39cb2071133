import type { GrownOld, PriceKind } from '../../plan/sureness/grown-old';
import { listOf } from './list-of';

const sorts: Readonly<Record<PriceKind, string>> = {
  equipment: 'equipment and work',
  fuel: 'fuel',
  power: 'power from the grid',
  credits: 'tax credits',
};

/** Prices that were to be looked at again before the day of the plan; empty where none were. */
export function sayGrownOld(old: readonly GrownOld[]): string[] {
  if (old.length === 0) return [];
  const checked = old.map((one) => one.checked).sort()[0]!;
  return [
    `These prices have grown old: ${listOf(old.map(({ prices }) => sorts[prices]))}, last checked on ${checked}. Ask for today's before you decide by them.`,
  ];
}
