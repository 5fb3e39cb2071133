import type { QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure, type Source } from '../quantity/figure';
import type { FigureName } from '../quantity/figure-name';
import type { HouseholdLoadRow, Triple } from '../tables/household-loads';
import type { Facts } from './facts';

/** Source of an answer: told, read off a label, or assumed. */
export function sourceOfAnswer(facts: Facts, id: QuestionId, nameplate = false): Source {
  if (facts.told(id)) {
    return nameplate
      ? { kind: 'nameplate', is: 'label-read', question: id }
      : { kind: 'told', is: 'told', question: id };
  }
  return {
    kind: 'assumed',
    is: 'not-known',
    cite: [{ answer: id }],
    question: id,
  };
}

/** Source of a row of the household-load table. */
export function sourceOfRow(row: HouseholdLoadRow): Source {
  const kind = row.standing === 'practice' ? 'practice' : 'table';
  return {
    kind,
    is: { code: 'load-row', row: row.id, standing: row.standing },
    cite: row.source,
  };
}

/** A figure from a table's low, likely, high. */
export function figureOf(
  [low, likely, high]: Triple,
  unit: string,
  name: FigureName,
  source: Source,
): Figure {
  return figure({ low, value: likely, high, unit, name, source });
}
