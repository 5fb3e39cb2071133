import interview from '#compiled/questions.js';
import { type Answer, type Answers, NOT_SURE } from '../src/interview/answers';
import { holds } from '../src/interview/holds';
import { seeded } from './fixtures/random-problem';
import { answerTo, type Draw } from './random-answer';

/** How much a household tells: the shares of questions it is not sure of, and is never asked. */
interface Habit {
  readonly unsure: number;
  readonly unasked: number;
}

/** Half tell nearly all; the others are less sure, or stop here and there. Our judgement. */
const habits: readonly Habit[] = [
  { unsure: 0.02, unasked: 0 },
  { unsure: 0.1, unasked: 0.02 },
  { unsure: 0.3, unasked: 0.02 },
  { unsure: 0.05, unasked: 0.2 },
];

/**
 * A whole home made up by chance: the real questions in their order, each asked where its condition holds, mostly
 * told, now and then "not sure", now and then never put. The same seed gives the same home.
 */
export function randomHome(seed: number): Answers {
  const random = seeded(seed);
  const habit = habits[Math.floor(random() * habits.length)]!;
  const draw: Draw = { random, known: new Map(), commonShare: random() < 0.6 ? 0.8 : 0 };
  const { known } = draw;
  const answers: Record<string, Answer> = {};
  for (const question of interview.questions) {
    if (question.when !== undefined && !holds(question.when, known)) continue;
    const assumed = question.unsure.assume;
    const chance = random();
    if (chance < habit.unasked) known.set(question.id, { value: assumed, how: 'unasked' });
    else if (chance < habit.unasked + habit.unsure && question.kind !== 'name') {
      answers[question.id] = NOT_SURE;
      known.set(question.id, { value: assumed, how: 'unsure' });
    } else {
      const value = answerTo(question, draw);
      answers[question.id] = value;
      known.set(question.id, { value, how: 'told' });
    }
  }
  return answers;
}
