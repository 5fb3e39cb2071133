import { questionAt } from '../interview/questions/relevant';
import { sayAnswer } from '../interview/say-answer';
import type { Context, State } from '../interview/state';

/** What a label was read as, a line each. */
export function labelWords(context: Context, { label }: State): string[] {
  return Object.entries(label ?? {}).map(([id, answer]) => {
    const question = questionAt(context, id);
    return `${question.says}: ${sayAnswer(question, answer)}.`;
  });
}
