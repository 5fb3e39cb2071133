import curves from '#compiled/tables/heat-pump-curves.js';
import type { Table } from './table';

/** Coefficients of a curve in indoor and outdoor temperature, F; see the table's notes. */
export interface HeatPumpCurve {
  id: 'capacity' | 'input';
  a: number;
  b: number;
  c: number;
  d: number;
  e: number;
  f: number;
}

/** Capacity, and power input per unit of heat, of a heat pump by temperature. NREL/TP-5500-56354, 2013. */
export const heatPumpCurves: Table<HeatPumpCurve> = curves;

/** One of the two curves by its name. */
export function heatPumpCurve(id: HeatPumpCurve['id']): HeatPumpCurve {
  return heatPumpCurves.rows.find((row) => row.id === id)!;
}
