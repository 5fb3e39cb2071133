import names from '#compiled/tables/state-names.js';
import type { Table } from '../table';

/** Two letters and the full name of every state and territory that has ZIP codes. */
export const stateNames: Table<{ state: string; name: string }> = names;

/** The full name of a state or territory by its two letters, in any case; letters that are none stay as they are. */
export function stateName(code: string): string {
  const letters = code.toUpperCase();
  return stateNames.rows.find(({ state }) => state === letters)?.name ?? code;
}
