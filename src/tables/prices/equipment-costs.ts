import costs, { type RowId } from '#compiled/tables/equipment-costs.js';
import type { Cite } from '../../quantity/cite';
import type { Table } from '../table';
import type { Noise } from './noise';

/** One sort of equipment or work a route can be made of. */
export type EquipmentClass = RowId;

export interface EquipmentCostRow {
  class: EquipmentClass;
  /** What `low`, `likely` and `high` are for one of. */
  unit: 'job' | 'kWh' | 'W';
  low: number;
  likely: number;
  high: number;
  /** Year whose dollars these are. */
  year: number;
  standing: 'published' | 'practice' | 'memory' | 'judgement';
  source: Cite;
  /** Upkeep, $ a year per unit. */
  upkeepLow: number;
  upkeepLikely: number;
  upkeepHigh: number;
  /** Life, years; 0 when the row buys nothing that wears (a permit). */
  lifeLow: number;
  lifeLikely: number;
  lifeHigh: number;
  /** Weeks from order to working. */
  leadWeeksLow: number;
  leadWeeksHigh: number;
  noise: Noise;
  /** Can be taken along to the next home. */
  movesHouse: boolean;
}

/** Installed cost of backup equipment, $ per unit, as dated ranges. */
export const equipmentCosts: Table<EquipmentCostRow> = costs;

/** The row of one class. Throws RangeError for a class the table does not hold. */
export function equipmentCost(equipmentClass: EquipmentClass): EquipmentCostRow {
  const row = equipmentCosts.rows.find((r) => r.class === equipmentClass);
  if (!row) throw new RangeError(`no equipment cost row for class "${equipmentClass}"`);
  return row;
}

/** Whole years between the year of a row's dollars and `asOf` (YYYY-MM-DD); over two is worth saying aloud. */
export function priceAgeYears(row: { year: number }, asOf: string): number {
  return Number(asOf.slice(0, 4)) - row.year;
}
