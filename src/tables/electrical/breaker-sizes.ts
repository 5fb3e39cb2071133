import sizes from '#compiled/tables/nec-240-6a.js';
import type { Table } from '../table';

/** Standard breaker ratings up to 400 A. NEC 240.6(A). */
export const breakerSizes: Table<{ amps: number }> = sizes;

/** Smallest standard breaker of at least `amps`; null above 400 A. */
export function breakerAtLeast(amps: number): number | null {
  return breakerSizes.rows.find((row) => row.amps >= amps)?.amps ?? null;
}

/** Largest standard breaker of at most `amps`; null below 15 A. */
export function breakerAtMost(amps: number): number | null {
  return breakerSizes.rows.findLast((row) => row.amps <= amps)?.amps ?? null;
}
