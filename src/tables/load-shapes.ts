import shapes from '#compiled/tables/load-shapes.js';
import type { Table } from './table';

export interface LoadShapeRow {
  id: string;
  standing: 'published' | 'judgement';
  /** As printed, midnight first; see `loadShape` for shares that add up to 1. */
  fractions: number[];
}

/** Share of a day's use by hour. ANSI/RESNET/ICC 301-2022 Addendum C table C.3, and our own plain steps. */
export const loadShapes: Table<LoadShapeRow> = shapes;

/**
 * The 24 hourly shares of a shape, midnight first, scaled to add up to 1 (printed rows are rounded to a thousandth).
 * Throws RangeError for an id that is not in the table.
 */
export function loadShape(id: string): number[] {
  const row = loadShapes.rows.find((r) => r.id === id);
  if (!row) throw new RangeError(`no load shape called ${id}`);
  const sum = row.fractions.reduce((total, share) => total + share, 0);
  return row.fractions.map((share) => share / sum);
}
