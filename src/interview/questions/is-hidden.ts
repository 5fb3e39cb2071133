import type { Interview, Question } from './question';
import { restsOn } from './rests-on';

/** True where the answer to a question is not for a shared screen: a name, who lives there and their health, money. */
export function isHidden({ private: kinds }: Pick<Interview, 'private'>, id: string): boolean {
  return [kinds.name, kinds.people, kinds.money].some((ids) => ids.includes(id));
}

/** True where the question is asked only because of such an answer, so that its words tell of it. */
export function tellsOfHidden(
  interview: Pick<Interview, 'private' | 'questions'>,
  { when }: Pick<Question, 'when'>,
): boolean {
  if (when === undefined) return false;
  const known = telling.get(interview) ?? new Map<Question['when'], boolean>();
  telling.set(interview, known);
  const tells =
    known.get(when) ??
    interview.questions.some(({ id }) => isHidden(interview, id) && restsOn(when, id));
  known.set(when, tells);
  return tells;
}

/** By interview and condition: a screen asks it at every key. */
const telling = new WeakMap<object, Map<Question['when'], boolean>>();
