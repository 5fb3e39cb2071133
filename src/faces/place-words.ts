import { questionAt, relevant, stillOpen } from '../interview/relevant';
import type { Context, State } from '../interview/state';

/**
 * "Section 5 of 13: Water and waste (about 60 questions left)". Sections that have no question for this home are not
 * counted; what is left is judged as if every open question were answered "not sure".
 */
export function placeWords(context: Context, { at, answers }: State): string {
  const here = questionAt(context, at).topic;
  const open = new Set(relevant(context, answers).map((q) => q.topic));
  const topics = context.interview.topics.filter((t) => open.has(t.id) || t.id === here);
  const index = topics.findIndex((t) => t.id === here);
  const place = `Section ${index + 1} of ${topics.length}: ${topics[index]?.title ?? ''}`;
  const left = stillOpen(context, answers).length;
  if (left === 0) return place;
  return `${place} (about ${left} ${left === 1 ? 'question' : 'questions'} left)`;
}
