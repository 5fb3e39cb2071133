import type { Context, State } from '../state';
import { holds } from './holds';
import { type OpenCounts, openCounts } from './open-counts';
import type { Choice, Question } from './question';
import { resolve } from './resolve';

/** Which questions may be asked. */
type Asking = Pick<Context, 'interview' | 'short'>;

/** The questions that apply to the answers so far, in asking order. */
export function relevant(context: Asking, answers: State['answers']): Question[] {
  const known = resolve(asked(context), answers, 'leave');
  return asked(context).filter((q) => q.when === undefined || holds(q.when, known));
}

/** What is still to be answered, judged as if each open question were answered "not sure". */
export function stillOpen(context: Asking, answers: State['answers']): readonly Question[] {
  return openIn(context, answers).unanswered;
}

/** What is open in these answers, by every count there is. */
export function openIn(context: Asking, answers: State['answers']): OpenCounts {
  const questions = asked(context);
  const known = resolve(questions, answers, 'assume');
  const { mattersMost } = context.interview;
  return openCounts({ questions, mattersMost }, (id) => known.get(id)?.how ?? 'does-not-apply');
}

/** It has no answer yet and is asked by itself: an optional one waits until somebody opens it. */
export const isToAsk = ({ id, optional }: Question, answers: State['answers']): boolean =>
  answers[id] === undefined && optional !== true;

/** Every question this kind of interview may ask. */
export function asked({ interview, short }: Asking): readonly Question[] {
  if (!short) return interview.questions;
  return interview.questions.filter((q) => interview.opening.includes(q.id));
}

/** The choices of a question that this home can have. */
export function offered(
  context: Pick<Context, 'interview'>,
  state: Pick<State, 'answers'>,
  question: Question,
): Choice[] {
  const known = resolve(context.interview.questions, state.answers, 'assume');
  return (question.choices ?? []).filter((c) => c.when === undefined || holds(c.when, known));
}

/** What "not sure" takes of a question, as far as this home has it; null where nothing may be assumed. */
export function assumedOf(
  context: Pick<Context, 'interview'>,
  state: Pick<State, 'answers'>,
  question: Question,
): Question['unsure']['assume'] {
  const { assume } = question.unsure;
  if (assume === null || typeof assume !== 'object') return assume;
  const ids = offered(context, state, question).map((choice) => choice.id);
  return assume.filter((id) => ids.includes(id));
}

export function questionAt(context: Pick<Context, 'interview'>, id: string): Question {
  const found = context.interview.questions.find((q) => q.id === id);
  if (found === undefined) throw new RangeError(`no question is called ${id}`);
  return found;
}
