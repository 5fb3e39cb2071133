import { onceMade } from '../../quantity/once-made';
import type { Context, State } from '../state';
import { holds } from './holds';
import { type OpenCounts, openCounts } from './open-counts';
import type { Choice, Interview, Question } from './question';
import { type Resolved, resolve } from './resolve';

/** Which questions may be asked. */
type Asking = Pick<Context, 'interview' | 'short'>;

/** The questions that apply to the answers so far, in asking order. */
export function relevant(context: Asking, answers: State['answers']): readonly Question[] {
  return settledOf(asked(context), answers).relevant();
}

/** What is still to be answered, judged as if each open question were answered "not sure". */
export function stillOpen(context: Asking, answers: State['answers']): readonly Question[] {
  return openIn(context, answers).unanswered;
}

/** What is open in these answers, by every count there is. */
export function openIn(context: Asking, answers: State['answers']): OpenCounts {
  const questions = asked(context);
  const known = settledOf(questions, answers).assumed();
  const { mattersMost } = context.interview;
  return openCounts({ questions, mattersMost }, (id) => known.get(id)?.how ?? 'does-not-apply');
}

/** It has no answer yet and is asked by itself: an optional one waits until somebody opens it. */
export const isToAsk = ({ id, optional }: Question, answers: State['answers']): boolean =>
  answers[id] === undefined && optional !== true;

/** Every question this kind of interview may ask. */
export function asked({ interview, short }: Asking): readonly Question[] {
  if (!short) return interview.questions;
  const known = openings.get(interview);
  if (known !== undefined) return known;
  const made = interview.questions.filter((q) => interview.opening.includes(q.id));
  openings.set(interview, made);
  return made;
}

const openings = new WeakMap<Interview, readonly Question[]>();

/** What follows from answers, worked out when it is asked for first. */
interface Settled {
  readonly questions: readonly Question[];
  readonly assumed: () => Resolved;
  readonly relevant: () => readonly Question[];
}

const settled = new WeakMap<State['answers'], Settled>();

/** A screen, a key and a line each ask it many times of the same answers, so it is kept; answers must not change. */
function settledOf(questions: readonly Question[], answers: State['answers']): Settled {
  const known = settled.get(answers);
  if (known?.questions === questions) return known;
  const made = {
    questions,
    assumed: onceMade(() => resolve(questions, answers, 'assume')),
    relevant: onceMade(() => {
      const left = resolve(questions, answers, 'leave');
      return questions.filter((q) => q.when === undefined || holds(q.when, left));
    }),
  };
  settled.set(answers, made);
  return made;
}

/** The choices of a question that this home can have. */
export function offered(
  context: Pick<Context, 'interview'>,
  state: Pick<State, 'answers'>,
  question: Question,
): Choice[] {
  const known = settledOf(context.interview.questions, state.answers).assumed();
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
