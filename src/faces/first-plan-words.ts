import { stillOpen } from '../interview/relevant';
import type { Context, State } from '../interview/state';
import { glanceWords } from './glance-words';
import type { ShownDraft } from './shown-draft';

export const FIRST_PLAN_TITLE = 'A first plan. It is a draft, not for buying from.';

/** What the opening adds up to, and what would make it surer. */
export function firstPlanWords(context: Context, state: State, draft: ShownDraft): string[] {
  return [...glanceWords(draft.glance), ...draft.lines, ...leftToAsk(context, state)];
}

function leftToAsk(context: Context, { answers }: State): string[] {
  const { opening } = context.interview;
  const open = stillOpen({ ...context, short: false }, answers);
  const left = open.filter(({ id }) => !opening.includes(id)).length;
  if (left === 0) return [];
  const safety = open.filter((question) => question.safety === true).length;
  const some = safety === 0 ? '' : `, ${safety} of them about safety`;
  return [
    `About ${left} questions are still open${some}. Where nobody knows, the plan takes the careful side.`,
  ];
}
