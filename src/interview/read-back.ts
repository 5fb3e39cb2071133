import { resolve } from './questions/resolve';
import { sayAnswer } from './say-answer';
import type { Context, State } from './state';

/** An answer read back before the plan is written. */
export interface ReadBack {
  readonly id: string;
  readonly says: string;
  readonly said: string;
}

/**
 * The answers told that open the way to a generator, to be looked at once more before a plan rests on them. None where
 * the first of them, its place, was not told: then no generator is open.
 */
export function answersToReadBack(context: Context, answers: State['answers']): ReadBack[] {
  const { readBack: opens, questions } = context.interview;
  // As the plan takes them: a question applies also where an earlier one is still open.
  const known = resolve(questions, answers, 'assume');
  const told = questions.filter(
    ({ id }) => known.get(id)?.how === 'told' && opens[id]?.includes(String(answers[id])),
  );
  const [deciding] = Object.keys(opens);
  if (told.every(({ id }) => id !== deciding)) return [];
  return told.map((q) => ({ id: q.id, says: q.says, said: sayAnswer(q, answers[q.id]) }));
}
