import { stillOpen } from '../interview/questions/relevant';
import type { Context, State } from '../interview/state';
import { SUMS_FAILED } from './draft-safely';
import { NO_SUMS } from './draft-words';
import { glanceWords } from './glance-words';
import type { ShownDraft } from './shown-draft';

export const WAITING = 'One moment: looking for the question that could change your plan most.';

const FIRST_PLAN_TITLE = 'A first plan. It is a draft, not for buying from.';

/** What stands over the plan so far: where the opening ends, and where nothing still open would change what to buy. */
export function planSoFarTitle(state: State): string {
  return state.view === 'enough' ? enoughTitle(state) : FIRST_PLAN_TITLE;
}

/** The plan so far; where the opening ends also what would make it surer. */
export function planSoFar(
  context: Context,
  state: State,
  draft: ShownDraft | typeof SUMS_FAILED,
): string[] {
  if (draft === SUMS_FAILED) return [NO_SUMS];
  const plan = [...glanceWords(draft.glance), ...draft.lines];
  return state.view === 'enough' ? plan : [...plan, ...leftToAsk(context, state)];
}

/** That nothing still open would change what to buy, and how many answers would sharpen it. */
export function enoughTitle({ next }: Pick<State, 'next'>): string {
  const sharpen = next?.code === 'enough' ? next.sharpen : 0;
  const nothing = 'Nothing you could still answer would change what to buy.';
  if (sharpen === 0) return nothing;
  return `${nothing} ${sharpen} ${sharpen === 1 ? 'answer' : 'answers'} would sharpen the figures.`;
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
