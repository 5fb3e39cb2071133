import { afterChange, backToPlan } from './after-plan';
import { show } from './begin';
import { firstRow, NO_ROW } from './keys/no-row';
import type { Again, NextStep } from './next-step';
import { asksOfHome } from './opening';
import type { Question } from './questions/question';
import { isToAsk, questionAt, relevant } from './questions/relevant';
import type { Context, State } from './state';
import { toCheck } from './to-check';
import { setAside } from './unfinished';
import { words } from './words';

/** After an answer: the next question, the list it was opened from, or the first plan where the opening ends. */
export function goOn(context: Context, state: State): State {
  const fresh = notAnswered(relevant(context, state.answers), state.answers);
  if (state.walking !== null) return nextFound(context, state);
  if (state.fromCheck) {
    const opened = fresh.find((id) => !state.leftOpen.includes(id));
    if (opened !== undefined) return { ...show(context, state, opened), fromCheck: true };
    return state.changing === null ? toCheck(context, state) : afterChange(context, state);
  }
  if (context.listFirst === true && leavesDanger(context, state)) {
    return { ...toCheck(context, state), row: NO_ROW };
  }
  if (endsOpening(context, state)) return firstPlan(state);
  return goToNext(context, state);
}

/** Where the opening ends: a first plan, or which answer there is none without. */
function firstPlan(state: State): State {
  return { ...state, view: 'first-plan', row: NO_ROW, scroll: 0, error: null };
}

/** The list of what to look at. */
export function toWalk(state: State): State {
  return { ...state, view: 'walk', walking: null, row: NO_ROW, scroll: 0, error: null };
}

/** The next of what was found on the walk, or the list with what is left on it. */
export function nextFound(context: Context, state: State): State {
  const order = relevant(context, state.answers).map((q) => q.id);
  const [next, ...walking] = (state.walking ?? []).filter((id) => order.includes(id));
  if (next === undefined) return toWalk(state);
  const shown = show(context, { ...state, walking, fromCheck: false, trail: [], ahead: [] }, next);
  return { ...shown, row: firstRow(questionAt(context, next)) };
}

/** The last answer of the opening was given: a first plan stands. Danger is asked at every sitting, and ends nothing. */
function endsOpening(context: Context, state: State): boolean {
  if (!asksOfHome(context.interview, state.at)) return false;
  const { opening } = context.interview;
  const next = nextOf(context, state);
  return next === undefined || !opening.includes(next);
}

/** What is to be asked yet; what is asked of nobody by itself is not. */
const notAnswered = (questions: readonly Question[], answers: State['answers']): string[] =>
  questions.filter((question) => isToAsk(question, answers)).map(({ id }) => id);

/** The first new question, or the one we came back from, whichever is asked first. */
function nextOf(context: Context, state: State): string | undefined {
  const asked = relevant(context, state.answers);
  const order = asked.map((q) => q.id);
  const fresh = notAnswered(asked, state.answers);
  const here = order.indexOf(state.at);
  const nearest = state.ahead.filter((id) => order.indexOf(id) > here).at(-1);
  return [fresh.find((id) => order.indexOf(id) > here) ?? fresh[0], nearest]
    .filter((id) => id !== undefined)
    .sort((a, b) => order.indexOf(a) - order.indexOf(b))[0];
}

/** What the face found to come next, where it was waited for. */
export function takeNext(context: Context, state: State, next: NextStep | null): State {
  if (state.view !== 'wait') return state;
  if (next === null) return goToNext({ ...context, guided: false }, state);
  if (next.code === 'enough') {
    const again = next.again.find(({ questionId }) => !state.askedAgain.includes(questionId));
    if (again !== undefined) return onceMore(context, state, again);
    return { ...state, view: 'enough', next, row: NO_ROW, scroll: 0, error: null };
  }
  // The count never rises while nothing new was brought up.
  const before = state.next?.code === 'ask' ? state.next.left : next.left;
  const falling = { ...next, left: Math.min(next.left, before) };
  const trail = [...state.trail, state.at];
  return show(context, { ...state, next: falling, trail }, next.questionId);
}

/** What was "not sure" and nothing can be advised without, once a sitting. */
function onceMore(context: Context, state: State, { questionId, why }: Again): State {
  const next: NextStep = { code: 'ask', questionId, why, left: 1 };
  const trail = [...state.trail, state.at];
  const askedAgain = [...state.askedAgain, questionId];
  return show(context, { ...state, next, trail, askedAgain }, questionId);
}

/** After the opening: forward again to what was left by going back, else the face is asked. */
function guidedOn(context: Context, state: State): State {
  const order = relevant(context, state.answers).map((q) => q.id);
  const nearest = state.ahead.filter((id) => order.includes(id)).at(-1);
  if (nearest === undefined) return { ...state, view: 'wait', ahead: [], error: null };
  const ahead = state.ahead.slice(0, state.ahead.lastIndexOf(nearest));
  return show(context, { ...state, ahead, trail: [...state.trail, state.at] }, nearest);
}

/** True once every question of the opening that is asked of this home has an answer. */
export function isOpened(
  context: Pick<Context, 'interview' | 'short'>,
  answers: State['answers'],
): boolean {
  const { opening } = context.interview;
  return relevant(context, answers).every(
    ({ id }) => !opening.includes(id) || answers[id] !== undefined,
  );
}

/** That question, or the list of answers where none is left. */
export function goToNext(context: Context, state: State): State {
  if (context.guided === true && !state.asksRest && isOpened(context, state.answers)) {
    // The short talk ends with the opening, also where that was answered at an earlier sitting.
    return context.short ? firstPlan(state) : guidedOn(context, state);
  }
  const order = relevant(context, state.answers).map((q) => q.id);
  const here = order.indexOf(state.at);
  const ahead = state.ahead.filter((id) => order.indexOf(id) > here);
  const nearest = ahead.at(-1);
  const next = nextOf(context, state);
  if (next === undefined) return { ...toCheck(context, state), row: NO_ROW };
  // What was answered at an earlier sitting is passed over, but the way back leads through it.
  const passed = order.slice(here + 1, Math.max(here + 1, order.indexOf(next)));
  const trail = [...state.trail, state.at, ...passed];
  const rest = next === nearest ? ahead.slice(0, -1) : ahead;
  return show(context, { ...state, trail, ahead: rest }, next);
}

/** Danger was just asked, as at the start of every sitting, in a home that has other answers. */
function leavesDanger({ interview }: Context, { at, trail, answers }: State): boolean {
  const { question } = interview.dangers;
  return at === question && trail.length === 0 && Object.keys(answers).length > 2;
}

/**
 * A question opened from the list. An answer changed there leads back to the list, by way of the questions the
 * change brings up. One that was still open is a place to go on from.
 */
export function openFromList(context: Context, state: State, id: string): State {
  const leftOpen = notAnswered(relevant(context, state.answers), state.answers);
  // After a plan every answer is laid beside it, also one that was open.
  const fromCheck = state.changing !== null || !leftOpen.includes(id);
  return {
    ...show(context, { ...state, walking: null, trail: [], ahead: [] }, id),
    fromCheck,
    leftOpen,
  };
}

/** One question back, or out of help and the like. */
export function goBack(context: Context, state: State): State {
  if (state.view === 'welcome') return state;
  if (['first-plan', 'wait', 'enough', 'compare'].includes(state.view))
    return show(context, state, state.at);
  if (['help', 'unusual', 'label'].includes(state.view)) {
    const row = firstRow(questionAt(context, state.at));
    return { ...state, view: 'ask', row, unusual: null, label: null, error: null };
  }
  if (state.view === 'tonight-help')
    return { ...state, view: 'tonight', row: NO_ROW, scroll: 0, error: null };
  if (state.view === 'walk') return { ...toCheck(context, state), row: NO_ROW };
  if (state.walking !== null) return toWalk(setAside(context, state));
  if (state.view === 'read-back') return { ...toCheck(context, state), row: NO_ROW };
  if (state.view === 'act-now' || state.view === 'tonight')
    return show(context, { ...state, notice: null }, state.at);
  const left = setAside(context, state);
  if (left.fromCheck) return toCheck(context, left);
  const order = relevant(context, left.answers).map((q) => q.id);
  const trail = left.trail.filter((id) => order.includes(id));
  const before = trail.at(-1);
  if (before !== undefined) {
    const ahead = [...left.ahead, left.at];
    return show(context, { ...left, notice: null, trail: trail.slice(0, -1), ahead }, before);
  }
  // Opened from the list to go on from there: back is the list.
  if (left.at !== order[0]) return toCheck(context, left);
  return { ...state, error: words.firstQuestion };
}

/** Esc on the list of answers returns to the question left last; after a plan, to that plan. */
export function leaveCheck(context: Context, state: State): State {
  if (state.changing !== null) return backToPlan(context, state);
  return show(context, state, state.at);
}
