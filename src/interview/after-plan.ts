import type { Answers } from './answers';
import { show } from './begin';
import { end } from './end';
import { NO_ROW } from './keys/no-row';
import { relevant } from './questions/relevant';
import { answersToReadBack } from './read-back';
import type { Context, State } from './state';
import { toCheck } from './to-check';
import type { AskAgain } from './what-if/what-if-state';
import { words } from './words';

/**
 * After a plan: these questions are asked again in full, one after the other, then both plans are laid side by side. Without
 * any the list of answers is shown, to choose one.
 */
export function changeAfterPlan(context: Context, state: State, again: AskAgain): State {
  const { answers } = state;
  const { ask, tried = {} } = again;
  const fresh: State = {
    ...state,
    ending: null,
    error: null,
    notice: null,
    walking: null,
    trail: [],
    ahead: [],
    leftOpen: openNow(context, answers),
    changing: { before: answers, queue: ask, tried },
  };
  return nextAsked(context, fresh) ?? { ...toCheck(context, fresh), row: NO_ROW };
}

/** An answer was changed: the next that is to be asked again, or both plans side by side. */
export function afterChange(context: Context, state: State): State {
  const next = nextAsked(context, state);
  if (next !== null) return next;
  if (!isChanged(state)) {
    return { ...toCheck(context, state), notice: words.sameAnswer };
  }
  return { ...state, view: 'compare', row: NO_ROW, scroll: 0, error: null };
}

/** The first of the queue that is asked of this home by the answers as they are now. */
function nextAsked(context: Context, state: State): State | null {
  const [id, ...queue] = state.changing?.queue ?? [];
  if (id === undefined) return null;
  const { tried } = state.changing!;
  const rest: State = { ...state, changing: { ...state.changing!, queue } };
  const asked = relevant(context, state.answers).some((one) => one.id === id);
  if (!asked) return nextAsked(context, rest);
  const said = tried[id];
  const notice = said === undefined ? null : words.wasTried(said);
  return { ...show(context, rest, id), fromCheck: true, notice };
}

/** Back to the plan where nothing differs from it; else what differs is looked at first. */
export function backToPlan(context: Context, state: State): State {
  if (!isChanged(state)) return end(context, state, 'plan');
  return { ...state, view: 'compare', row: NO_ROW, scroll: 0, error: null };
}

/** The answers as they were in the plan. */
export function dropChange(context: Context, state: State): State {
  const { before } = state.changing!;
  return end(context, { ...state, answers: before, unfinished: {} }, 'plan');
}

/** A new plan; what was changed and opens the way to a generator is read back before it. */
export function keepChange(context: Context, state: State): State {
  const { before } = state.changing!;
  const told = answersToReadBack(context, state.answers);
  const opens = told.some(({ id }) => !same(before[id], state.answers[id]));
  if (!opens) return end(context, state, 'plan');
  return { ...state, view: 'read-back', row: 0, scroll: 0, error: null, notice: null };
}

const isChanged = ({ answers, changing }: State): boolean =>
  changing !== null && !sameAnswers(answers, changing.before);

/** The same questions answered in the same way, in whatever order. */
export function sameAnswers(one: Answers, other: Answers): boolean {
  const ids = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...ids].every((id) => same(one[id], other[id]));
}

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

const openNow = (context: Context, answers: Answers): string[] =>
  relevant(context, answers)
    .filter(({ id }) => answers[id] === undefined)
    .map(({ id }) => id);
