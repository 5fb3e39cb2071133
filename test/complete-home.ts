import type { QuestionId } from '#compiled/question-ids.js';
import interview from '#compiled/questions.js';
import { type Answer, type Answers, NOT_SURE } from '../src/interview/answers';
import { holds } from '../src/interview/questions/holds';
import { type Known, resolve } from '../src/interview/questions/resolve';
import { contradictions } from '../src/plan/contradictions';
import type { Contradiction } from '../src/plan/contradictions/contradiction';
import { billFit } from '../src/plan/money/bill-fit';
import { tariffOf } from '../src/plan/money/tariff-of';
import { seeded } from './fixtures/random-problem';
import { homeOfAnswers } from './home-of-answers';
import { likelyAnswerTo } from './likely-answer';
import { answerTo, type Draw, pick, type Random } from './random-answer';
import { comesBackTo, hangOnIt } from './random-home';

/** The day their figures are counted from. */
const AS_OF = '2026-11-25';
/** Looks at what does not fit before another home is made up. */
const ROUNDS = 60;
/** How many questions that no plan rests on it is not sure of. */
const UNSURE = 0.04;

/** Told by everybody whose plan is complete: what matters most, and whatever could hurt. */
const needed = (id: string, safety = false) => safety || interview.mattersMost.includes(id);

/**
 * A home made up by chance that knows itself: every question that applies is met, those a plan rests on are told, no two
 * answers contradict each other, and where somebody lives by a device a second way is agreed. Its plan is complete.
 * The same seed gives the same home.
 */
export function completeHome(seed: number): Answers {
  return madeUp(seed, answerTo);
}

/** The same, its answers drawn as often as households give them (`likely-answer.ts`), and not each as often as any other. */
export function likelyHome(seed: number): Answers {
  return madeUp(seed, likelyAnswerTo);
}

type AnswerTo = typeof answerTo;

const homesBy = new Map<AnswerTo, Map<number, Answers>>([
  [answerTo, new Map()],
  [likelyAnswerTo, new Map()],
]);

/** Made up once for all that ask for it. */
function madeUp(seed: number, by: AnswerTo): Answers {
  const homes = homesBy.get(by)!;
  const made = homes.get(seed) ?? Object.freeze(makeUp(seed, by));
  homes.set(seed, made);
  return made;
}

/** Always anew: what the same seed gives is held by making it up twice. */
export function makeUp(seed: number, answerTo: AnswerTo): Answers {
  const random = seeded(seed ^ 0xc0de);
  for (;;) {
    let answers = comeBack(filled({}, random, answerTo), random, answerTo);
    for (let round = 0; round < ROUNDS; round++) {
      const home = homeOfAnswers(answers, AS_OF);
      const [first] = contradictions(home, answers);
      if (first === undefined) return answers;
      answers = filled(withoutOne(answers, first, random), random, answerTo);
    }
  }
}

/** What must run is answered once more, when all that it can hold is told. */
function comeBack(answers: Answers, random: Random, answerTo: AnswerTo): Answers {
  const question = interview.questions.find((one) => one.id === comesBackTo)!;
  const known = new Map(resolve(interview.questions, answers, 'assume'));
  const again = answerTo(question, { random, known, commonShare: 0, usualOnly: true });
  const kept = Object.entries(answers).filter(([id]) => !hangOnIt.includes(id));
  return filled({ ...Object.fromEntries(kept), [comesBackTo]: again }, random, answerTo);
}

/** Each question that applies has the answer it had, or where it had none a new one. */
function filled(before: Answers, random: Random, answerTo: AnswerTo): Answers {
  const known = new Map<string, Known>();
  const draw: Draw = { random, known, commonShare: 0.8, usualOnly: true };
  const answers: Record<string, Answer> = {};
  for (const question of interview.questions) {
    if (question.when !== undefined && !holds(question.when, known)) continue;
    const { id, unsure, kind, safety } = question;
    const fresh = () =>
      !needed(id, safety) && kind !== 'name' && random() < UNSURE
        ? NOT_SURE
        : answerTo(question, draw);
    const drawn = before[id] ?? fresh();
    const answer = settled[id as QuestionId]?.(random, drawn) ?? drawn;
    answers[id] = answer;
    known.set(
      id,
      answer === NOT_SURE
        ? { value: unsure.assume, how: 'unsure' }
        : { value: answer, how: 'told' },
    );
  }
  return answers;
}

/** Nothing about health is held back, and where somebody lives by a device a second way is agreed with all who must know. */
const settled: Partial<Record<QuestionId, (random: Random, drawn: Answer) => Answer>> = {
  'medical-devices': (_, drawn) => (`${drawn}` === 'prefer-not-to-say' ? ['none'] : drawn),
  'second-source': (random) => [
    pick(['cylinders', 'spare-batteries', 'hand-powered', 'other-place'], random),
  ],
  'device-team': () => ['clinician', 'supplier', 'power-company'],
};

/** Without one of the answers that do not fit together, or with the one that settles them. */
function withoutOne(answers: Answers, { id, questions }: Contradiction, random: Random): Answers {
  if (id === 'month-outside-year') {
    return { ...answers, 'bill-kwh': pick(answers['bill-year-kwh'] as number[], random) };
  }
  if (id === 'bill-not-matched') {
    const home = homeOfAnswers(answers, AS_OF);
    const { low, high } = billFit(home, tariffOf(home, null)!)!.expected;
    return { ...answers, 'bill-dollars': Math.round(low + (high - low) * random()) };
  }
  const { [pick(questions, random)]: _, ...rest } = answers;
  return rest;
}
