import incentives from '#compiled/tables/incentives.js';
import type { Table } from './table';

export interface IncentiveRow {
  code: string;
  name: string;
  /** Last day it applied, YYYY-MM-DD. */
  endedAfter: string;
  says: string;
}

/** Federal credits that have ended, with the day. Public Law 119-21. */
export const endedIncentives: Table<IncentiveRow> = incentives;

/** Sentences about the credits that no longer apply on `asOf` (YYYY-MM-DD). */
export function endedBy(asOf: string): string[] {
  return endedIncentives.rows.filter((row) => row.endedAfter < asOf).map((row) => row.says);
}
