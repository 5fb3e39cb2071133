import type { Question } from '../interview/questions/question';
import { sayAnswer } from '../interview/say-answer';
import { formatQuantity } from '../quantity/format-quantity';

/** What "I'm not sure" makes the plan assume, in a sentence or two. */
export function unsureWords(question: Question): string {
  const { assume, low, high, because } = question.unsure;
  if (question.kind === 'name') return because;
  const why = /[.!?]$/.test(because) ? because : `${because}.`;
  if (assume === null) return `We assume nothing. ${why}`;
  const said = sayAnswer(question, assume);
  const unit = question.unit ?? 'count';
  const range =
    low === undefined || high === undefined || low === high
      ? ''
      : `, somewhere between ${formatQuantity(low, unit)} and ${formatQuantity(high, unit)}`;
  return `We assume: ${said}${range}. ${why}`;
}
