import type { Question } from '../questions/question';

/**
 * The mark stands on no line. So every list begins: Enter answers nothing that nobody moved to, for held or doubled
 * it would answer a question of safety with whatever line comes first.
 */
export const NO_ROW = -1;

/** Where the mark stands when a question comes up without an answer: in its field, else nowhere. */
export function firstRow(question: Question): number {
  return question.choices === undefined ? 0 : NO_ROW;
}
