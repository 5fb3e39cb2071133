import { type Document, type Node, Scalar } from 'yaml';
import { type Answer, numbersIn } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import { exactQuantity } from '../quantity/exact-quantity';

/** An answer as it stands in a home file: numbers with their unit, several numbers on one line. */
export function answerNode(doc: Document, question: Question, answer: Answer): Node {
  // Numbers stand in one line, as they were typed.
  const flow = numbersIn(answer) !== null;
  return doc.createNode(writtenAs(answer, question.unit), { flow }) as Node;
}

/** The line above an answer: its question. */
export function commentOf(question: Question): string {
  return ` ${question.ask}`;
}

export const UNFINISHED_COMMENT =
  ' Typed or ticked and not entered yet. No answers: the plan does not count them.';

function writtenAs(answer: Answer, unit: string | undefined): unknown {
  if (typeof answer !== 'number') return Array.isArray(answer) ? [...answer] : answer;
  const exact = exactQuantity(answer, unit ?? 'count');
  return exact === String(answer) ? answer : exact;
}

export function quoted(text: string): Scalar {
  const scalar = new Scalar(text);
  scalar.type = Scalar.QUOTE_DOUBLE;
  return scalar;
}
