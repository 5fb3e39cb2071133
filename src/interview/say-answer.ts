import { formatQuantity } from '../quantity/format-quantity';
import { type Answer, NOT_SURE } from './answers';
import type { Question } from './question';
import { words } from './words';

/** An answer in the words a person reads: choice labels, or the number with its unit. */
export function sayAnswer(question: Question, answer: Answer | undefined): string {
  if (answer === undefined) return 'Not answered yet';
  if (answer === NOT_SURE) return words.notSure;
  if (typeof answer === 'number') return formatQuantity(answer, question.unit ?? 'count');
  if (typeof answer === 'string') return labelOf(question, answer);
  return answer.length === 0 ? 'None' : answer.map((id) => labelOf(question, id)).join('; ');
}

function labelOf(question: Question, id: string): string {
  return question.choices?.find((choice) => choice.id === id)?.label ?? id;
}
