import { stillOpen } from '../interview/questions/relevant';
import type { Context, State } from '../interview/state';
import { glanceWords } from './glance-words';
import type { ShownDraft } from './shown-draft';

export const FIRST_PLAN_TITLE = 'A first plan. It is a draft, not for buying from.';

/** What the opening adds up to, and what would make it surer. */
export function firstPlanWords(context: Context, state: State, draft: ShownDraft): string[] {
  return [...glanceWords(draft.glance), ...draft.lines, ...leftToAsk(context, state)];
}

/** What follows, in words: most of what is open is never asked, so its number would only frighten. */
function leftToAsk(context: Context, { answers }: State): string[] {
  const open = stillOpen({ ...context, short: false }, answers);
  if (open.length === 0) return [];
  const careful = 'Not everything is told. Where nobody knows, the plan takes the careful side.';
  return context.short
    ? [careful]
    : [`${careful} If you go on, we ask only what could still change it.`];
}
