import table, { type RowId } from '#compiled/tables/rules.js';
import type { Cite } from '../quantity/cite';
import type { Table } from './table';

/** Id of a rule: each has a row, and each row a rule. */
export type RuleId = RowId;

export interface RuleRow {
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
  /** It speaks of one season alone: out of it, it stands behind the others. */
  season?: 'winter' | 'summer';
  /** Never cut short: steps in an order, of which a part would mislead. */
  whole?: boolean;
  /** Holds for a route laid beside the advice too, though it cannot kill: it decides whether that route can be had. */
  beside?: boolean;
  /** Published sources with their editions, or how we know it. */
  cite: Cite;
}

/** How grave each rule is, who may do the work, where it comes from; its words stand in `words`. */
export const ruleRows: Table<RuleRow> = table;

const byId = new Map(ruleRows.rows.map((row) => [row.id, row]));

/** The row of one rule. Throws RangeError for an id the table does not hold. */
export function ruleOf(id: RuleId): RuleRow {
  const row = byId.get(id);
  if (!row) throw new RangeError(`the rules hold no row "${id}"`);
  return row;
}
