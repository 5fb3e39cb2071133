import curve from '#compiled/tables/itic-curve.js';
import type { Table } from './table';

export interface IticPoint {
  side: 'under' | 'over';
  percentOfNominal: number;
  /** null: without end. */
  seconds: number | null;
}

/** Ride-through points of the ITI (CBEMA) curve, 2000. Never for a medical device. */
export const iticCurve: Table<IticPoint> = curve;
