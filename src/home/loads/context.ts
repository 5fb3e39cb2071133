import type { QuestionId } from '#compiled/question-ids.js';
import type { Figure } from '../../quantity/figure';
import { answerFigure, type Widths } from '../answer-figure';
import type { Facts } from '../facts';
import type { ClimateHours } from '../weather/climate-hours';

/** What every group of loads is worked out from. */
export interface LoadContext {
  readonly facts: Facts;
  readonly widths: Widths;
  /** Null while the place is not known: the table's hours stand. */
  readonly climate: ClimateHours | null;
}

/** The answer to a number question as a figure, or null. */
export function asFigure(
  { facts, widths }: LoadContext,
  id: QuestionId,
  unit: string,
  nameplate = false,
): Figure | null {
  return answerFigure(facts, widths, id, { unit, nameplate });
}
