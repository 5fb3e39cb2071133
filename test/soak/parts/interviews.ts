import interview from '#compiled/questions.js';
import { advise, onlyReady } from '../../../src/advice/advise';
import { widthsOf } from '../../../src/home/build-home';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import type { Answers } from '../../../src/interview/answers';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { undecidedOf } from '../../../src/plan/sureness/floor-of-answers';
import { allKinds, sizedKind } from '../../../src/routes/all-routes';
import { findings } from '../../../src/rules/find';
import { brokenIn } from '../broken-in';
import { randomInterview } from '../interviews';
import { batteryPlace, generatorPlace, wiring } from '../never/places';
import { note, type Part, type Tally } from '../part';
import { tryPlan } from '../try-plan';

/** Of so many interviews one is planned whole. */
const PLANNED = 50;
/** In a test, of so many one is advised. */
const LIGHT = 5;
/** Drawn years of weather behind the advice. */
const YEARS = 2;
const AS_OF = '2026-11-25';
const widths = widthsOf(interview);

/** Interviews led by chance, what would be advised after each, and a whole plan now and then. */
export const interviews: Part = {
  whole: 100_000,
  of: 'interview',
  try(seed, tally) {
    const answers = talked(seed, tally);
    advised(seed, answers, tally);
    if (seed % PLANNED === 0) tryPlan(`interview ${seed}`, answers, tally);
  },
  light(seed, tally) {
    const answers = talked(seed, tally);
    if (seed % LIGHT === 0) advised(seed, answers, tally);
  },
};

function talked(seed: number, tally: Tally): Answers {
  const { answers, wrong } = randomInterview(seed);
  note(tally, `interview ${seed}`, 'an interview', wrong);
  return answers;
}

function advised(seed: number, answers: Answers, tally: Tally): void {
  note(tally, `interview ${seed}`, 'sound advice', adviceFaults(answers));
}

/** What is wrong with the routes and with what is advised: broken figures, and what may never be open or unsaid. */
function adviceFaults(answers: Answers): string[] {
  const home = homeFromAnswers(interview, answers, AS_OF);
  const drawn = new SyntheticYears(home, YEARS);
  const kinds = allKinds(home, drawn, widths);
  const routes = kinds.map(({ route }) => route);
  const thin = undecidedOf(interview, home).length > 0;
  const advice = thin
    ? onlyReady(kinds)
    : advise(home, drawn, kinds, (kind, lived, on) => sizedKind(kind, lived, on, widths));
  const ids = findings(home, [advice.route.kind]).map((one) => one.id);
  const weighed = { plan: { home, routes } };
  const broken = brokenIn({ routes, advice });
  return [
    ...[generatorPlace, batteryPlace, wiring].flatMap((held) => held(weighed) ?? []),
    ...(broken === null ? [] : [`a broken figure at ${broken}`]),
    ...(advice.route.verdict === 'cannot' ? [`${advice.route.kind} is advised and cannot be`] : []),
    ...(home.lifeSupport !== 'no' && !ids.includes('leaving-point') ? ['no leaving point'] : []),
  ];
}
