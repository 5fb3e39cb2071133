import table9 from '#compiled/tables/nec-chapter-9-table-9.js';
import type { Table } from '../table';

export interface WireReactanceRow {
  size: string;
  pvc: number;
  steel: number;
}

/** Reactance at 60 Hz, ohm per 1000 ft by wire size, 4 AWG and thicker. NEC Chapter 9, Table 9. */
export const wireReactance: Table<WireReactanceRow> = table9;

/** Reactance in steel conduit, the larger, ohm per 1000 ft; 0 where it changes the drop by less than 1 %. */
export function reactancePer1000Ft(size: string): number {
  return wireReactance.rows.find((row) => row.size === size)?.steel ?? 0;
}
