import letters from '#compiled/tables/nec-430-7b.js';
import type { Table } from '../table';

export interface CodeLetterRow {
  letter: string;
  kvaPerHpLow: number;
  /** null for letter V, which has no upper end. */
  kvaPerHpHigh: number | null;
}

/** Locked-rotor kVA per hp by code letter. NEC Table 430.7(B). */
export const codeLetters: Table<CodeLetterRow> = letters;

/** The row of a code letter, upper or lower case; null when the letter is not in the table (I, O, Q, others). */
export function codeLetterRow(letter: string): CodeLetterRow | null {
  return codeLetters.rows.find((row) => row.letter === letter.trim().toUpperCase()) ?? null;
}
