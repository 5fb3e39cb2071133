import { questionAt, relevant, stillOpen } from '../interview/relevant';
import type { Context, State } from '../interview/state';

/**
 * "Section 5 of 13: Water and waste". Sections that have no question for this home are not counted, judged as if
 * every open question were answered "not sure".
 */
export function placeWords(context: Context, { at, answers }: State): string {
  const here = questionAt(context, at).topic;
  const asked = [...relevant(context, answers), ...stillOpen(context, answers)];
  const open = new Set(asked.map((q) => q.topic));
  const topics = context.interview.topics.filter((t) => open.has(t.id) || t.id === here);
  const index = topics.findIndex((t) => t.id === here);
  return `Section ${index + 1} of ${topics.length}: ${topics[index]?.title ?? ''}`;
}

/** "about 60 questions left", judged as if every open question were answered "not sure"; empty when none is. */
export function leftWords(context: Context, { answers }: State): string {
  const left = stillOpen(context, answers).length;
  if (left === 0) return '';
  return `about ${left} ${left === 1 ? 'question' : 'questions'} left`;
}
