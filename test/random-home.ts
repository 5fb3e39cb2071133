import interview from '#compiled/questions.js';
import { type Answer, type Answers, NOT_SURE } from '../src/interview/answers';
import { holds } from '../src/interview/questions/holds';
import type { Question } from '../src/interview/questions/question';
import type { Known } from '../src/interview/questions/resolve';
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

/** Of so many homes one comes back to what must run once all is told, and finds more lines there. Our judgement. */
const COMES_BACK = 3;

/** Asked early, with lines for what is told later; what hangs on it is answered again. */
export const comesBackTo = 'must-run';
export const hangOnIt: readonly string[] = ['must-also', 'nice-run'];

/**
 * A whole home made up by chance: the real questions in their order, each asked where its condition holds, mostly
 * told, now and then "not sure", now and then never put. The same seed gives the same home.
 */
export function randomHome(seed: number): Answers {
  const random = seeded(seed);
  const habit = habits[Math.floor(random() * habits.length)]!;
  const draw: Draw = { random, known: new Map(), commonShare: random() < 0.6 ? 0.8 : 0 };
  const first = asked(habit, draw, new Map());
  if (draw.known.get(comesBackTo)?.how !== 'told' || random() * COMES_BACK >= 1) return first;
  const question = interview.questions.find((one) => one.id === comesBackTo)!;
  const again = new Map<string, Known>(draw.known);
  for (const id of hangOnIt) again.delete(id);
  again.set(comesBackTo, { value: answerTo(question, draw), how: 'told' });
  return asked(habit, { ...draw, known: new Map() }, again);
}

/** Each question that applies: as it was left before, or told, not sure or never put. */
function asked(habit: Habit, draw: Draw, before: ReadonlyMap<string, Known>): Answers {
  const answers: Record<string, Answer> = {};
  for (const question of interview.questions) {
    if (question.when !== undefined && !holds(question.when, draw.known)) continue;
    const at = before.get(question.id) ?? met(question, habit, draw);
    draw.known.set(question.id, at);
    if (at.how === 'unsure') answers[question.id] = NOT_SURE;
    else if (at.how === 'told') answers[question.id] = at.value!;
  }
  return answers;
}

function met(question: Question, habit: Habit, draw: Draw): Known {
  const { assume } = question.unsure;
  const chance = draw.random();
  if (chance < habit.unasked) return { value: assume, how: 'unasked' };
  if (chance < habit.unasked + habit.unsure && question.kind !== 'name')
    return { value: assume, how: 'unsure' };
  return { value: answerTo(question, draw), how: 'told' };
}
