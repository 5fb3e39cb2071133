import types from '#compiled/tables/battery-types.js';
import type { Table } from './table';

export type BatteryType = 'lithium-iron-phosphate' | 'lead-acid-sealed' | 'lead-acid-flooded';

export interface BatteryTypeRow {
  battery: BatteryType;
  usableDepth: number;
  usableDepthLow: number;
  usableDepthHigh: number;
  roundTrip: number;
  roundTripLow: number;
  roundTripHigh: number;
  fadePerYear: number;
  /** Share of the capacity it may take in an hour. */
  chargePerHour: number;
  shareAt0C: number;
  shareAtMinus20C: number;
  /** Coldest cells that may be charged. */
  leastChargeC: number;
  peukertExponent: number;
}

/** Home batteries by chemistry. Common practice. */
export const batteryTypes: Table<BatteryTypeRow> = types;

/** The row of one kind of battery. Throws RangeError for a kind not in the table. */
export function batteryType(battery: BatteryType): BatteryTypeRow {
  const row = batteryTypes.rows.find((r) => r.battery === battery);
  if (!row) throw new RangeError(`no battery type "${battery}"`);
  return row;
}

/** The cold points of a kind of battery, for `coldCapacity`. */
export function coldPoints(row: BatteryTypeRow): { cellC: number; share: number }[] {
  return [
    { cellC: -20, share: row.shareAtMinus20C },
    { cellC: 0, share: row.shareAt0C },
    { cellC: 25, share: 1 },
  ];
}
