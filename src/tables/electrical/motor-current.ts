import fullLoad from '#compiled/tables/nec-430-248.js';
import type { Table } from '../table';

export interface FullLoadRow {
  hp: number;
  amps115: number;
  amps200: number;
  amps208: number;
  amps230: number;
}

/** Full-load current of single-phase motors, A by hp. NEC Table 430.248. */
export const fullLoadCurrent: Table<FullLoadRow> = fullLoad;
