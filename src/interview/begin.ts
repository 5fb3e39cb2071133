import { exactQuantity } from '../quantity/exact-quantity';
import { type Answer, type Answers, choicesIn, NOT_SURE, numbersIn } from './answers';
import { firstRow, NO_ROW } from './keys/no-row';
import { fieldOf } from './keys/text-field';
import type { Question } from './questions/question';
import { offered, questionAt, relevant } from './questions/relevant';
import { sayAnswer } from './say-answer';
import type { Context, State } from './state';
import type { Unfinished } from './unfinished';
import { words } from './words';

/** The interview at its start. Triage comes first, whatever was answered before. */
export function begin(context: Context, answers: Answers, unfinished: Unfinished = {}): State {
  const { 'now-danger': _, ...kept } = answers;
  const { 'now-danger': __, ...begun } = unfinished;
  const first = relevant(context, kept)[0]!;
  return show(context, { ...blank, answers: kept, unfinished: begun, at: first.id }, first.id);
}

/** The same, with a word of welcome before it. */
export function welcome(state: State): State {
  return { ...state, view: 'welcome', row: 0 };
}

const blank: State = {
  answers: {},
  unfinished: {},
  at: '',
  view: 'ask',
  trail: [],
  ahead: [],
  next: null,
  label: null,
  walking: null,
  askedAgain: [],
  asksRest: false,
  changing: null,
  fromCheck: false,
  leftOpen: [],
  field: fieldOf(''),
  row: 0,
  ticked: [],
  digits: '',
  error: null,
  notice: null,
  unsaved: null,
  unusual: null,
  scroll: 0,
  ending: null,
};

/** Put a question on the screen, filled in with what stood unfinished in it, else with the answer it has. */
export function show(context: Context, state: State, id: string): State {
  const question = questionAt(context, id);
  const answer = state.answers[id];
  const begun = state.unfinished[id];
  const fresh: State = { ...state, at: id, view: 'ask', digits: '', error: null, unusual: null };
  return {
    ...fresh,
    scroll: 0,
    field: fieldOf(typeof begun === 'string' ? begun : typedFor(question, answer)),
    ticked: Array.isArray(begun) ? begun : (choicesIn(answer) ?? []),
    row: begun === undefined ? rowFor(context, fresh, question, answer) : firstRow(question),
    ...(begun === undefined ? {} : { notice: words.begun(sayAnswer(question, begun)) }),
  };
}

/** What stands in the field of a question with this answer. */
export function typedFor(question: Question, answer: Answer | undefined): string {
  if (answer === undefined || answer === NOT_SURE) return '';
  if (typeof answer === 'object') return numbersIn(answer)?.join(' ') ?? '';
  if (typeof answer === 'number') return exactQuantity(answer, question.unit ?? 'count');
  return question.choices === undefined ? String(answer) : '';
}

/** The row of the answer that was given; without one the field, or none. */
function rowFor(
  context: Context,
  state: State,
  question: Question,
  answer: Answer | undefined,
): number {
  if (answer === undefined) return firstRow(question);
  const choices = offered(context, state, question);
  const own = question.choices === undefined ? 1 : choices.length;
  if (answer === NOT_SURE) return own;
  const chosen = choices.findIndex((c) => c.id === answer || choicesIn(answer)?.[0] === c.id);
  return question.choices === undefined ? 0 : chosen < 0 ? NO_ROW : chosen;
}
