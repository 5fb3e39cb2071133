import demand from '#compiled/tables/nec-220-55.js';
import type { Table } from '../table';

export interface CookingDemandRow {
  units: number;
  /** Column A: units under 3.5 kW, share of their sum. */
  underShare: number;
  /** Column B: units of 3.5 to 8.75 kW, share of their sum. */
  midShare: number;
  /** Column C: units up to 12 kW, VA in all. */
  rangeVa: number;
}

/** Demand of up to five household cooking appliances. NEC Table 220.55. */
export const cookingDemand: Table<CookingDemandRow> = demand;
