import interview from '#compiled/questions.js';
import type { ExplainedFigure } from '../../faces/screen/plan/explain-view';
import { explainText, type Reader } from '../../papers/explain/explain-text';
import { explainable } from '../../plan/explain/explainable';
import type { Plan } from '../../plan/plan';
import { visible } from '../../quantity/visible';
import type { Words } from '../../words/words';

/** What a question is about, as in the list of answers. */
const asked = (id: string) => interview.questions.find((one) => one.id === id)?.says ?? null;

/** Whoever reads an explanation in lines of so many columns. */
export const readerOf = (words: Words, columns: number): Reader => ({ asked, words, columns });

/** The figures of a plan for the screen; their arithmetic is made when it is asked for. */
export function explainedFigures(plan: Plan, words: Words): ExplainedFigure[] {
  return explainable(plan).map((one) => ({
    says: visible(`${words.explain.title(one.id)}: ${words.explain.said(one.id, one.figure)}`),
    lines: (columns) => explainText(one, readerOf(words, columns)).map(visible),
  }));
}
