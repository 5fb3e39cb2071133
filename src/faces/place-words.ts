import { asksOfHome } from '../interview/opening';
import { questionAt, relevant, stillOpen } from '../interview/relevant';
import type { Context, State } from '../interview/state';

/** What the question is about: "Water and waste". */
export function placeWords(context: Context, { at }: State): string {
  const here = questionAt(context, at).topic;
  return context.interview.topics.find(({ id }) => id === here)?.title ?? '';
}

/**
 * How many questions come after this one: in the opening until a first plan, then in all. Judged as if every open
 * question were answered "not sure", so the count falls unless an answer opens new ones. Empty where none is left.
 */
export function leftWords(context: Context, state: State): string {
  const { at, answers, next, walking } = state;
  if (walking !== null) {
    return walking.length === 0 ? 'the last on your list' : `${walking.length} more on your list`;
  }
  // Found with the question itself: how many would still change the plan.
  if (next?.code === 'ask' && next.questionId === at && !state.asksRest) {
    return next.left <= 1 ? 'perhaps the last one' : `about ${next.left - 1} more`;
  }
  const { opening } = context.interview;
  const open = stillOpen(context, answers).filter(({ id }) => id !== at);
  if (!opening.includes(at)) return open.length === 0 ? '' : `about ${open.length} more`;
  const left = open.filter(({ id }) => opening.includes(id)).length;
  if (left > 0) return `about ${left} more to a first plan`;
  const last = relevant(context, answers).findLast(({ id }) => asksOfHome(context.interview, id));
  if (last?.id === at) return 'the last one before a first plan';
  return open.length === 0 ? '' : `about ${open.length} more`;
}
