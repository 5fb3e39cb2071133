import type { Question } from '../interview/questions/question';
import { assumedOf } from '../interview/questions/relevant';
import { sayAnswer } from '../interview/say-answer';
import type { Context, State } from '../interview/state';
import { formatQuantity } from '../quantity/format-quantity';

/** What "I'm not sure" makes the plan assume of this home, in a sentence or two. */
export function unsureWords(context: Context, state: State, question: Question): string {
  const { low, high, because } = question.unsure;
  const assume = assumedOf(context, state, question);
  if (question.kind === 'name') return because;
  const why = /[.!?]$/.test(because) ? because : `${because}.`;
  if (assume === null) return question.kind === 'number' ? why : `We assume nothing. ${why}`;
  const said = sayAnswer(question, assume);
  const unit = question.unit ?? 'count';
  const range =
    low === undefined || high === undefined || low === high
      ? ''
      : `, somewhere between ${formatQuantity(low, unit)} and ${formatQuantity(high, unit)}`;
  return `We assume: ${said}${range}. ${why}`;
}
