import { asksOfHome } from '../interview/opening';
import { questionAt, relevant, stillOpen } from '../interview/questions/relevant';
import type { Context, State } from '../interview/state';

/** What the question is about: "Water and waste". */
export function placeWords(context: Context, { at }: State): string {
  const here = questionAt(context, at).topic;
  return context.interview.topics.find(({ id }) => id === here)?.title ?? '';
}

/** From so few on we cannot tell: the last of those looked at may bring up some more. */
const A_FEW = 4;

/**
 * What comes after this question: in the opening how many until a first plan; then how many would still change it, of
 * those looked at, so that is the least. A count never rises. Nothing is said where nothing honest can be: before it is
 * looked, most of what is open will never be asked.
 */
export function leftWords(context: Context, state: State): string {
  const { at, answers, next, walking, asksRest, fromCheck } = state;
  if (walking !== null) {
    return walking.length === 0 ? 'the last on your list' : `${walking.length} more on your list`;
  }
  if (next?.code === 'ask' && next.questionId === at && !asksRest) {
    return next.left - 1 < A_FEW ? 'a few more' : `at least ${next.left - 1} more`;
  }
  if (fromCheck) return '';
  const { opening } = context.interview;
  const open = stillOpen(context, answers).filter(({ id }) => id !== at);
  const left = opening.includes(at) ? open.filter(({ id }) => opening.includes(id)).length : 0;
  if (left > 0) return `about ${left} more to a first plan`;
  const last = relevant(context, answers).findLast(({ id }) => asksOfHome(context.interview, id));
  if (last?.id === at) return 'the last one before a first plan';
  const asksAll = context.guided !== true || asksRest;
  return asksAll && open.length > 0 ? `about ${open.length} more` : '';
}
