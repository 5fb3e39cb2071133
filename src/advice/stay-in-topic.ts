import type { Answers } from '../interview/answers';
import type { Interview, Question } from '../interview/questions/question';

/** A topic already begun goes on while its best question weighs at least this share of the best of all. Our judgement. */
const STAYS = 0.5;

/**
 * The one to ask of those worth asking: the weightiest; but of the topics begun since the opening, the first that still
 * holds one of at least half that weight is gone on with. It looks at what is answered and not at how the talk went, so
 * that a talk taken up again goes on alike.
 */
export function stayInTopic<T extends { readonly question: Question; readonly weight: number }>(
  interview: Interview,
  answers: Answers,
  worth: readonly T[],
): T {
  const best = weightiest(worth);
  const begun = new Set(
    interview.questions
      .filter(({ id }) => answers[id] !== undefined && !interview.opening.includes(id))
      .map(({ topic }) => topic),
  );
  const heavy = worth.filter(({ weight }) => weight >= STAYS * best.weight);
  for (const { id } of interview.topics) {
    const here = heavy.filter(({ question }) => question.topic === id);
    if (begun.has(id) && here.length > 0) return weightiest(here);
  }
  return best;
}

/** Of equals the one that is asked first in the interview. */
function weightiest<T extends { readonly weight: number }>(all: readonly T[]): T {
  return all.reduce((best, one) => (one.weight > best.weight ? one : best));
}
