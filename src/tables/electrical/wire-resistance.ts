import table8 from '#compiled/tables/nec-chapter-9-table-8.js';
import type { Table } from '../table';

export interface WireResistanceRow {
  size: string;
  circularMils: number;
  copperSolid: number | null;
  copperStranded: number;
  aluminum: number | null;
}

/** Direct-current resistance at 75 C, ohm per 1000 ft by wire size. NEC Chapter 9, Table 8. */
export const wireResistance: Table<WireResistanceRow> = table8;
