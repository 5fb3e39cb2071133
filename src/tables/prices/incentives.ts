import incentives from '#compiled/tables/incentives.js';
import type { Table } from '../table';

export interface IncentiveRow {
  code: '25D' | '25C' | '30C';
  name: string;
  /** Last day it applied, YYYY-MM-DD. */
  endedAfter: string;
}

/** Federal credits that have ended, with the day. Public Law 119-21. */
export const endedIncentives: Table<IncentiveRow> = incentives;

/** A credit that no longer applies, and the last day it did. */
export interface EndedIncentive {
  readonly code: IncentiveRow['code'];
  readonly endedAfter: string;
}

/** The credits that no longer apply on `asOf` (YYYY-MM-DD). */
export function endedBy(asOf: string): EndedIncentive[] {
  return endedIncentives.rows
    .filter((row) => row.endedAfter < asOf)
    .map(({ code, endedAfter }) => ({ code, endedAfter }));
}
