import { formatQuantity } from '../quantity/format-quantity';
import { type Answer, choicesIn, NOT_SURE, numbersIn } from './answers';
import type { Question } from './questions/question';
import { words } from './words';

/** An answer in the words a person reads: choice labels, or the number with its unit. */
export function sayAnswer(question: Question, answer: Answer | undefined): string {
  if (answer === undefined) return 'Not answered yet';
  if (answer === NOT_SURE) return words.notSure;
  if (typeof answer === 'number') return formatQuantity(answer, question.unit ?? 'count');
  if (typeof answer === 'string') return labelOf(question, answer);
  const numbers = numbersIn(answer);
  if (numbers !== null) return sayNumbers(numbers, question.unit ?? 'count');
  const ids = choicesIn(answer)!;
  return ids.length === 0 ? 'None' : ids.map((id) => labelOf(question, id)).join('; ');
}

/** "910, 850 and 700 kWh, together 2,460 kWh". */
function sayNumbers(numbers: readonly number[], unit: string): string {
  const all = numbers.map((one) => formatQuantity(one, 'count'));
  const sum = numbers.reduce((a, b) => a + b, 0);
  const last = formatQuantity(numbers.at(-1)!, unit);
  return `${all.slice(0, -1).join(', ')} and ${last}, together ${formatQuantity(sum, unit)}`;
}

function labelOf(question: Question, id: string): string {
  return question.choices?.find((choice) => choice.id === id)?.label ?? id;
}
