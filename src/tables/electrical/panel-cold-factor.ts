import factors from '#compiled/tables/nec-690-7a.js';
import type { Table } from '../table';

/** Voltage of crystalline silicon panels in the cold against their label, by lowest temperature. NEC Table 690.7(A). */
export const panelColdFactors: Table<{ fromC: number; factor: number }> = factors;

/** What a degree below the last row adds, a share per kelvin: the steepest of the table. */
const BELOW_PER_K = 0.004;

/**
 * Factor on the open-circuit voltage at the lowest temperature, C; 1 above 25 C. Below the table's -40 C it goes on by
 * 0.4 % a kelvin, which is on the careful side of its last rows.
 */
export function panelColdFactor(lowestC: number): number {
  if (lowestC > 25) return 1;
  const row = panelColdFactors.rows.find((r) => Math.floor(lowestC) >= r.fromC);
  if (row) return row.factor;
  const last = panelColdFactors.rows.at(-1)!;
  return last.factor + BELOW_PER_K * (last.fromC - lowestC);
}
