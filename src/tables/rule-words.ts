import words, { type RowId } from '#compiled/tables/rule-words.js';
import type { Table } from './table';

/** Id of a rule: each has a row of words, and each row a rule. */
export type RuleId = RowId;

export interface RuleWordsRow {
  id: RuleId;
  /** 5 can kill; 4 injury, fire or major damage; 3 the backup fails; 2 money or law; 1 nuisance. */
  severity: 1 | 2 | 3 | 4 | 5;
  /** Told by the household, it is something in use or in place that harms as it is: stop or mend it today. */
  wrongAsItIs?: true;
  /** Who may do the work or must be asked. */
  who: (
    | 'household'
    | 'licensed electrician'
    | 'gas fitter'
    | 'utility'
    | 'building or fire department'
    | 'clinician or supplier'
    | 'insurer or landlord'
  )[];
  /** The caution in plain words, one to five short sentences. */
  says: string;
  /** The same where nobody told it, so that nothing is claimed of this home that is only not known. */
  saysIfOpen?: string;
  /** What to ask for as proof; null when there is nothing to show. */
  proof: string | null;
  /** Never cut short: steps in an order, of which a part would mislead. */
  whole?: boolean;
  /** Holds for a route laid beside the advice too, though it cannot kill: it decides whether that route can be had. */
  beside?: boolean;
  /** Published source with its edition, or how we know it. */
  cite: string;
}

/** The words of each rule. */
export const ruleWords: Table<RuleWordsRow> = words;

const byId = new Map(ruleWords.rows.map((row) => [row.id, row]));

/** The words of one rule. Throws RangeError for an id the table does not hold. */
export function wordsOf(id: RuleId): RuleWordsRow {
  const row = byId.get(id);
  if (!row) throw new RangeError(`rule words hold no row "${id}"`);
  return row;
}
