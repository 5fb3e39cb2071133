import lockedRotor from '#compiled/tables/nec-430-251a.js';
import type { Table } from '../table';

export interface LockedRotorRow {
  hp: number;
  amps115: number;
  amps208: number;
  amps230: number;
}

/** Locked-rotor current of single-phase motors, A by hp. NEC Table 430.251(A). */
export const lockedRotorCurrent: Table<LockedRotorRow> = lockedRotor;
