import type { QuestionId } from '#compiled/question-ids.js';
import { type Figure, figure } from '../quantity/figure';
import type { Facts } from './facts';
import { sourceOfAnswer } from './sources';

/** How wide "not sure" leaves each number, from the question files. */
export type Widths = ReadonlyMap<string, { readonly low: number; readonly high: number }>;

/** A number answered or assumed, as a figure. Null when it may not be assumed or does not apply. */
export function answerFigure(
  facts: Facts,
  widths: Widths,
  id: QuestionId,
  as: { unit: string; nameplate?: boolean },
): Figure | null {
  const value = facts.number(id);
  if (value === null) return null;
  const width = facts.told(id) ? undefined : widths.get(id);
  return figure({
    value,
    low: width?.low ?? value,
    high: width?.high ?? value,
    unit: as.unit,
    is: { code: 'answer', question: id },
    source: sourceOfAnswer(facts, id, as.nameplate),
  });
}
