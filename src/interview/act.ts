import { formatQuantity } from '../quantity/format-quantity';
import { backToPlan, dropChange, keepChange } from './after-plan';
import { type Answer, choicesIn, NOT_SURE } from './answers';
import { show } from './begin';
import { checkTyped } from './check-answer';
import { dangersOf, mustLeave } from './dangers';
import { end, saveAndStop } from './end';
import { goBack, goOn, goToNext, nextFound, toWalk } from './go-on';
import { NO_ROW } from './keys/no-row';
import { readLabel } from './label-line';
import type { Question } from './questions/question';
import { assumedOf, questionAt } from './questions/relevant';
import { answersToReadBack } from './read-back';
import type { Act } from './rows';
import { sayAnswer } from './say-answer';
import type { Context, State } from './state';
import { toCheck } from './to-check';
import { setAside, settled } from './unfinished';
import { placeOf, walkIds } from './walk';
import { placeWord, words } from './words';

/** The interview after a line of its own was chosen, or a key that stands for one. */
export function onAct(context: Context, state: State, act: Act): State {
  if (act === 'draft' || act === 'write') {
    const { question } = context.interview.dangers;
    const told = choicesIn(state.answers[question]) ?? [];
    // Nobody writes a plan in a house that must be left.
    if (mustLeave(context.interview.dangers, told)) return actNow(state, question, told);
  }
  switch (act) {
    case 'begin':
      return show(context, state, state.at);
    case 'not-sure':
      return notSure(context, state);
    case 'later':
      return lookLater(context, state);
    case 'walk':
      return toWalk(state);
    case 'found':
      return nextFound(context, { ...state, walking: walkIds(context, state.answers) });
    case 'help':
      if (state.view === 'tonight') return { ...state, view: 'tonight-help', row: 0, scroll: 0 };
      return { ...state, view: 'help', row: 0, scroll: 0, digits: '', error: null, notice: null };
    case 'back':
      return goBack(context, state);
    case 'stop':
      return saveAndStop(context, state);
    case 'draft':
      return { ...setAside(context, state), view: 'check', row: NO_ROW, error: null };
    case 'yes':
      return accept(context, state, state.unusual?.value ?? NOT_SURE);
    case 'again':
      return { ...state, view: 'ask', row: 0, unusual: null, label: null };
    case 'label':
      return takeLabel(context, state);
    case 'read':
      return { ...state, notice: words.chooseOne };
    case 'go-on':
      return goOn(context, { ...state, view: 'ask', notice: null });
    case 'more':
      return goToNext(context, state);
    case 'tonight':
      return { ...state, view: 'tonight', row: NO_ROW, scroll: 0, error: null, notice: null };
    case 'rest':
      return goToNext(context, { ...state, asksRest: true });
    case 'stop-now':
      return end(context, state, 'danger');
    case 'keep':
      return keepChange(context, state);
    case 'drop':
      return dropChange(context, state);
    case 'change-more':
      return { ...toCheck(context, state), row: NO_ROW };
    case 'write':
      if (state.changing !== null) return backToPlan(context, state);
      return answersToReadBack(context, state.answers).length === 0
        ? end(context, state, 'plan')
        : { ...state, view: 'read-back', row: 0, scroll: 0, error: null, notice: null };
    case 'all-so':
      return end(context, state, 'plan');
  }
}

/** What stands in the field, taken as the answer, asked back, or answered with a sentence. */
export function submitTyped(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  const label = readLabel(context.interview.questions, state.at, state.field.text);
  if (label !== null) {
    return {
      ...state,
      view: 'label',
      label: label.answers,
      row: NO_ROW,
      error: null,
      notice: null,
    };
  }
  const read = checkTyped(question, state.field.text);
  if (!read.ok) return { ...state, error: read.message, row: 0 };
  if (question.kind === 'name') {
    const taken = context.nameProblem(String(read.value));
    if (taken !== null) return { ...state, error: taken };
  }
  if (read.unusual && typeof read.value === 'number') {
    const said = formatQuantity(read.value, question.unit ?? 'count');
    const unusual = { value: read.value, said };
    return { ...state, view: 'unusual', row: NO_ROW, error: null, unusual };
  }
  const notice = read.note === undefined ? null : words.understood(read.note);
  return accept(context, { ...state, notice }, read.value);
}

/** On the list for the walk: until it was looked at it counts as "not sure". */
function lookLater(context: Context, state: State): State {
  const place = placeOf(context.interview, state.at);
  if (place === null) return state;
  const notice = words.noted(placeWord[place]);
  return accept(context, { ...state, notice }, NOT_SURE);
}

function notSure(context: Context, state: State): State {
  const question = questionAt(context, state.at);
  if (question.kind === 'name') {
    const name = context.spareName();
    return accept(context, { ...state, notice: words.nameTaken(question.says, name) }, name);
  }
  return accept(context, { ...state, notice: takenInstead(context, state, question) }, NOT_SURE);
}

/** Not sure is an answer like any other: what the plan takes until somebody knows. Danger says what to check instead. */
function takenInstead(context: Context, state: State, question: Question): string {
  const assume = assumedOf(context, state, question);
  if (assume === null) return words.takesCareful(question.says);
  return words.takes(question.says, sayAnswer(question, assume));
}

/** All that the label told, at once; the question on the screen goes on as if it had been answered alone. */
function takeLabel(context: Context, state: State): State {
  const { [state.at]: own, ...others } = state.label ?? {};
  const answers = { ...state.answers, ...others };
  // The label told of its neighbor alone: this one is still open.
  if (own === undefined) return show(context, { ...state, answers, label: null }, state.at);
  return accept(context, { ...state, answers, label: null }, own);
}

/** Keep an answer. Danger shows what to do now; anything else goes on. */
export function accept(context: Context, state: State, answer: Answer): State {
  const question = questionAt(context, state.at);
  const kept: State = {
    ...state,
    answers: { ...state.answers, [state.at]: answer },
    unfinished: settled(state.unfinished, state.at),
    error: null,
  };
  const ids: readonly Answer[] = choicesIn(answer) ?? [answer];
  const asksOfDanger = state.at === context.interview.dangers.question;
  const urgent = asksOfDanger
    ? answer === NOT_SURE || dangersOf(context.interview.dangers, answer).length > 0
    : question.choices?.some((c) => c.actNow !== undefined && ids.includes(c.id));
  if (urgent) {
    return actNow(kept, state.at, answer === NOT_SURE ? [] : ids.map(String));
  }
  return goOn(context, kept);
}

/** What to do at once about these choices of a question. The line marked is one that does nothing. */
function actNow(state: State, at: string, ticked: readonly string[]): State {
  return { ...state, at, view: 'act-now', ticked, row: 0, scroll: 0, error: null, notice: null };
}
