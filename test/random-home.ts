import interview from '#compiled/questions.js';
import { type Answer, type Answers, NOT_SURE } from '../src/interview/answers';
import { outside } from '../src/interview/check-answer';
import { holds } from '../src/interview/holds';
import type { Question } from '../src/interview/question';
import type { Known } from '../src/interview/resolve';
import { seeded } from './fixtures/random-problem';

type Random = () => number;

/** How much a household tells: the shares of questions it is not sure of, and is never asked. */
interface Habit {
  readonly unsure: number;
  readonly unasked: number;
}

export interface Draw {
  readonly random: Random;
  /** What this home has told so far. */
  readonly known: Map<string, Known>;
  /** How often it answers as many homes would, where that is listed. */
  readonly commonShare: number;
}

/** Half tell nearly all; the others are less sure, or stop here and there. Our judgement. */
const habits: readonly Habit[] = [
  { unsure: 0.02, unasked: 0 },
  { unsure: 0.1, unasked: 0.02 },
  { unsure: 0.3, unasked: 0.02 },
  { unsure: 0.05, unasked: 0.2 },
];

/** Lists of ticks in which nothing is ticked more often than elsewhere. Our judgement. */
const rare: Readonly<Record<string, number>> = { 'now-danger': 0.85, 'medical-devices': 0.7 };

/** What many homes are, so that routes with wires and fuel are open in enough of them. Our judgement. */
const common: Readonly<Record<string, readonly string[]>> = {
  'home-kind': ['house'],
  'home-tenure': ['own'],
  'engine-place': ['open-20ft'],
  'battery-place': ['utility-room', 'attached-garage', 'outside-wall'],
  'panel-signs': ['none'],
  'panel-kind': ['main-breaker'],
  'flood-history': ['never'],
  operators: ['one', 'two'],
  permissions: ['none'],
};

/** From the coldest winters to hot ones, high and low, with a code of three digits and two that stand for no place. */
export const zips = [
  ...['94110', '48911', '70364', '55731', '85031', '98122', '33101', '80435', '04736'],
  ...['99701', '96813', '10027', '73301', '59715', '28801', '606', '00000', '96201'],
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

/** An answer a household could give to this question, by what it has told already. */
export function answerTo(question: Question, { random, known, commonShare }: Draw): Answer {
  if (question.kind === 'zip') return pick(zips, random);
  if (question.kind === 'name') return 'random-home';
  if (question.kind === 'number') return number(question, random);
  if (question.kind === 'numbers') {
    return Array.from({ length: question.count! }, () => number(question, random));
  }
  const offered = question.choices!.filter((c) => c.when === undefined || holds(c.when, known));
  const usual = offered.filter((c) => common[question.id]?.includes(c.id));
  const choices = usual.length > 0 && random() < commonShare ? usual : offered;
  if (question.kind === 'choice') return pick(choices, random).id;
  const alone = choices.filter((c) => c.alone);
  const others = choices.filter((c) => !c.alone);
  const none = alone.length > 0 && random() < (rare[question.id] ?? 0.4);
  if (none || others.length === 0) return [pick(alone, random).id];
  const most = 1 + Math.floor(random() ** 2 * others.length);
  const ticked = new Set(Array.from({ length: most }, () => pick(others, random).id));
  return others.map((c) => c.id).filter((id) => ticked.has(id));
}

/** Mostly a usual number, now and then any possible one, its ends among them; whole where the question wants that. */
function number(question: Question, random: Random): number {
  const chance = random();
  const [low, high] = (chance < 0.9 ? question.usual : null) ?? question.possible!;
  if (chance > 0.98) return low;
  if (chance > 0.96) return high;
  const any = low + (high - low) * random();
  const rounded = Number(any.toPrecision(3));
  const within = Math.min(high, Math.max(low, rounded));
  return outside(question, within) === null ? within : Math.round(any);
}

function pick<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}
