import motors from '#compiled/tables/submersible-motors.js';
import type { Table } from '../table';

export interface SubmersibleMotorRow {
  hp: number;
  runningLow: number;
  runningHigh: number;
  twoWireLow: number | null;
  twoWireHigh: number | null;
  threeWireLow: number;
  threeWireHigh: number;
}

/** Bands of running and locked-rotor current, A at 230 V by hp, from memory: a sanity band, not a rating. */
export const submersibleMotors: Table<SubmersibleMotorRow> = motors;
