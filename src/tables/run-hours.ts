import rows from '#compiled/tables/run-hours.js';
import type { Table } from './table';

interface RunHoursRow {
  /** Hours of the day, 0 to 24. */
  from: number;
  until: number;
}

const table: Table<RunHoursRow> = rows;

/** Stretches of the day, from and until. */
export type Stretches = readonly (readonly [from: number, until: number])[];

/** Hours in which a generator is run where its fuel must last longer, in the order of the day. */
export const runHours: Stretches = table.rows.map(({ from, until }) => [from, until]);
