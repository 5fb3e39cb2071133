import { buildHome, widthsOf } from '../home/build-home';
import { Facts } from '../home/facts';
import type { Home } from '../home/home';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import { resolve } from '../interview/questions/resolve';

/**
 * The home that a set of answers describes. What was not answered counts as "not sure".
 * @param asOf the day the ages of figures are counted from, YYYY-MM-DD
 */
export function homeFromAnswers(interview: Interview, answers: Answers, asOf: string): Home {
  const facts = new Facts(resolve(interview.questions, answers, 'assume'));
  return buildHome(facts, widthsOf(interview), asOf);
}
