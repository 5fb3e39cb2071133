import type { Tariff } from '../../bill/tariff/tariff';
import type { Answers } from '../../interview/answers';
import type { Interview } from '../../interview/questions/question';
import { contradictions } from '../contradictions';
import type { Contradiction } from '../contradictions/contradiction';
import { homeFromAnswers } from '../home-from-answers';

/** The answers so far that do not fit together, for the screen where all answers are checked. Sizes no route. */
export function answersToSettle(
  interview: Interview,
  answers: Answers,
  asOf: string,
  ownTariff: Tariff | null = null,
): Contradiction[] {
  return contradictions(homeFromAnswers(interview, answers, asOf), answers, ownTariff);
}
