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
  return interview.questions.some(({ id }) => isHidden(interview, id) && restsOn(when, id));
}
