import figures, { type RowId } from '#compiled/tables/practice-figures.js';
import type { NamedValueRow } from './named-values';
import type { Table } from './table';

/** Name of one of them. */
export type PracticeId = RowId;

/** Figures of the trade that no standard fixes: `value` is the likely one, with its range where it has one. */
export const practiceFigures: Table<
  NamedValueRow & { id: RowId; low?: number; high?: number; source: string }
> = figures;

const byId = new Map(practiceFigures.rows.map((row) => [row.id, row]));

/** The likely figure of one row, in the unit of the row. */
export const practice = (id: RowId): number => byId.get(id)!.value;

/** The same with its range; without one, the likely figure at both ends. */
export function practiceRange(id: RowId): { low: number; likely: number; high: number } {
  const { value, low = value, high = value } = byId.get(id)!;
  return { low, likely: value, high };
}
