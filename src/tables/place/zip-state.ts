import ranges from '#compiled/tables/zip-states.js';
import type { Table } from '../table';

/** State or territory by range of ZIP codes; the first row that holds a code wins. */
export const zipStates: Table<{ first: number; last: number; state: string }> = ranges;

/** The five digits of a ZIP code as a person types it ("80202", " 80202-1234 "); null when there are none. */
export function readZip(text: string): string | null {
  return /^\s*(\d{5})(?:[- ]?\d{4})?\s*$/.exec(text)?.[1] ?? null;
}

/** The first three digits where no more are given ("044"); null otherwise. */
export function readPrefix(text: string): string | null {
  return /^\s*(\d{3})\s*$/.exec(text)?.[1] ?? null;
}

/**
 * Two letters of the state or territory a ZIP code belongs to; `MIL` for a military post office; null
 * when the code is unreadable or its prefix is not in use.
 */
export function stateOfZip(zip: string): string | null {
  const digits = readZip(zip);
  if (digits !== null) return stateOfCode(Number(digits));
  const prefix = readPrefix(zip);
  if (prefix === null) return null;
  const [first, last] = ['00', '99'].map((end) => stateOfCode(Number(`${prefix}${end}`)));
  return first === last ? (first ?? null) : stateOfCode(Number(`${prefix}50`));
}

/** The same for a code as a number: 601 is 00601. */
export function stateOfCode(code: number): string | null {
  return zipStates.rows.find(({ first, last }) => code >= first && code <= last)?.state ?? null;
}
