import measures, { type RowId } from '#compiled/tables/measures.js';
import type { Cite } from '../quantity/cite';
import type { Triple } from './household-loads';
import type { Table } from './table';

/** A way to need less power in an outage. */
export type MeasureId = RowId;

/** What counts on it: the thrifty way of living, a purchase, work on the house, or nothing but a margin. */
export type MeasureUse = 'thrifty' | 'bought' | 'later' | 'margin';

/** What closes a measure; decided in `home/measures/not-where.ts`. */
export type NotWhere =
  | 'cold-harms'
  | 'heat-harms'
  | 'no-other-phone'
  | 'medicine-in-fridge'
  | 'pipes-may-freeze'
  | 'no-stove'
  | 'stove-there'
  | 'no-gas'
  | 'no-other-cooking'
  | 'animals-outside'
  | 'dialysis'
  | 'rented';

export interface MeasureRow {
  id: MeasureId;
  use: MeasureUse;
  /** What it gives in place of power. */
  gives: 'less' | 'light' | 'heat' | 'cooling' | 'cooking' | 'water';
  /** What gives it. */
  by: string;
  /** What the price is for one of. */
  each: 'home' | 'person' | 'gallon';
  /** Price, $. */
  low: number;
  likely: number;
  high: number;
  /** Low, likely and high share of the use, or of the start, that is left. */
  share?: Triple;
  /** Hours of the day in which it is on, from and until. */
  hours?: readonly (readonly [from: number, until: number])[];
  /** Room temperature as usual, and as it is set, F. */
  usualF?: number;
  setF?: number;
  /** Energy a person a day, Wh. */
  wattHours?: number;
  /** Water worth storing, and as much as jugs and a drum hold, gal. */
  fewestGal?: number;
  mostGal?: number;
  who: 'household' | 'gas-fitter' | 'cooling-fitter' | 'contractor';
  notWhere: readonly NotWhere[];
  standing: 'published' | 'practice' | 'memory' | 'judgement';
  source: Cite;
}

/** Ways to need less, one row a way, in the order in which they are told. */
export const measureTable: Table<MeasureRow> = measures;

/** The row of a measure; throws RangeError for an id that is not in the table. */
export function measureRow(id: MeasureId): MeasureRow {
  const row = measureTable.rows.find((one) => one.id === id);
  if (!row) throw new RangeError(`no measure called ${id}`);
  return row;
}
