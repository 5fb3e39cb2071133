import interview from '#compiled/questions.js';
import { remembered } from '../src/advice/remembered';
import { buildHome, widthsOf } from '../src/home/build-home';
import { Facts } from '../src/home/facts';
import type { Home } from '../src/home/home';
import { siteOf } from '../src/home/site';
import type { Answers } from '../src/interview/answers';
import { resolve } from '../src/interview/questions/resolve';

const widths = widthsOf(interview);
const siteAt = remembered((known) => siteOf(new Facts(known)));

/**
 * The home of these answers; its place and climate are looked up once for all that tell the same of them.
 * @param asOf the day ages are counted from, YYYY-MM-DD
 */
export function homeOfAnswers(answers: Answers, asOf: string): Home {
  const known = resolve(interview.questions, answers, 'assume');
  return buildHome(new Facts(known), widths, asOf, siteAt(known));
}
