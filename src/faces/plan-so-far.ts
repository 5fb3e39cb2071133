import { questionAt, stillOpen } from '../interview/questions/relevant';
import type { Context, State } from '../interview/state';
import { words } from '../interview/words';
import { SUMS_FAILED } from './draft-safely';
import { NO_SUMS } from './draft-words';
import { glanceWords, lifeAlone, placeRead } from './glance-words';
import type { ShownDraft } from './shown-draft';

export const WAITING = 'One moment: looking for the question that could change your plan most.';

const FIRST_PLAN_TITLE = 'A first plan. It is a draft, not for buying from.';
const NO_PLAN_TITLE = 'No plan yet: too little is told to advise anything.';
const STILL_NO_PLAN =
  'Still no plan: nothing we could ask now stands in for the answer that was not sure.';

/** What stands over the plan so far: where the opening ends, and where nothing still open would change what to buy. */
export function planSoFarTitle(context: Context, state: State, draft: SoFar | null): string {
  const none = missingOf(draft).length > 0;
  if (state.view === 'enough') return none ? STILL_NO_PLAN : enoughTitle(context, state);
  return none ? NO_PLAN_TITLE : FIRST_PLAN_TITLE;
}

/** What the answers add up to, or that there are no sums just now. */
export type SoFar = ShownDraft | typeof SUMS_FAILED;

function missingOf(draft: SoFar | null): readonly string[] {
  return draft === null || draft === SUMS_FAILED ? [] : draft.glance.missing;
}

/** The plan so far; where the opening ends also what would make it surer. */
export function planSoFar(context: Context, state: State, draft: SoFar): string[] {
  if (draft === SUMS_FAILED) return [NO_SUMS];
  const missing = draft.glance.missing.map((id) => questionAt(context, id).says);
  const glance =
    missing.length === 0
      ? glanceWords(draft.glance)
      : [...lifeAlone(draft.glance), ...placeRead(draft.glance), decidesWords(missing)];
  const plan = [...glance, ...draft.lines];
  return state.view === 'enough' ? plan : [...plan, ...leftToAsk(context, state)];
}

/** Which answers nothing can be advised without, each "not sure" or not yet given, and where to give them. */
function decidesWords(says: readonly string[]): string {
  const one = says.length === 1;
  return `${one ? 'This answer decides' : 'These answers decide'}: ${says.join('; ')}. Once you know ${one ? 'it' : 'them'}, choose "${words.answersSoFar}" below.`;
}

/** That nothing still open would change what to buy, and how many of the questions not answered would sharpen it. */
export function enoughTitle(
  context: Context,
  { next, answers }: Pick<State, 'next' | 'answers'>,
): string {
  const sharpen = next?.code === 'enough' ? next.sharpen : 0;
  const nothing = 'Nothing we could still ask would change what to buy.';
  if (sharpen === 0) return nothing;
  return `${nothing} ${sharpen} of the ${stillOpen(context, answers).length} questions not answered yet would sharpen the figures.`;
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
