import shares from '#compiled/answer-shares.js';
import type { Answer } from '../src/interview/answers';
import { outside } from '../src/interview/check-answer';
import { holds } from '../src/interview/questions/holds';
import type { Question } from '../src/interview/questions/question';
import { answerTo, type Draw, pick, type Random, zips } from './random-answer';

/** Codes of five digits that stand for a place. */
const places = zips.filter((zip) => /^\d{5}$/.test(zip) && zip !== '00000' && zip !== '96201');

/** Standard deviations at which the 5th and the 95th of a hundred lie. */
const Z_95 = 1.645;

/**
 * An answer drawn as often as `questions/shares.yaml` says that households give it, among those who can tell. A number: its
 * usual range holds 90 of 100, what "not sure" counts is the middle, and each half is normal, by ratio where the range is above 0.
 */
export function likelyAnswerTo(question: Question, draw: Draw): Answer {
  const { random, known } = draw;
  if (question.kind === 'zip') return pick(places, random);
  if (question.kind === 'number') return likelyNumber(question, random);
  if (question.kind === 'choice' || question.kind === 'choices') {
    const offered = question.choices!.filter((c) => c.when === undefined || holds(c.when, known));
    const shareOf = (id: string) => shares[question.id]?.of[id] ?? 0;
    if (question.kind === 'choice') return byShare(offered, ({ id }) => shareOf(id), random).id;
    return ticked(offered, shareOf, random);
  }
  return answerTo(question, draw);
}

interface Line {
  readonly id: string;
  readonly alone?: boolean;
}

/** None of it as often as that is said; else each line by itself, until at least one is ticked. */
function ticked(offered: readonly Line[], shareOf: (id: string) => number, random: Random) {
  const alone = offered.filter((one) => one.alone === true);
  const lines = offered.filter((one) => one.alone !== true);
  const none = lines.length === 0 ? 1 : alone.reduce((sum, { id }) => sum + shareOf(id), 0);
  if (random() < none) return [byShare(alone, ({ id }) => shareOf(id), random).id];
  for (;;) {
    const ids = lines.filter(({ id }) => random() * (1 - none) < shareOf(id)).map(({ id }) => id);
    if (ids.length > 0) return ids;
    if (lines.every(({ id }) => shareOf(id) === 0)) return [pick(lines, random).id];
  }
}

function byShare<T>(all: readonly T[], shareOf: (one: T) => number, random: Random): T {
  const sum = all.reduce((total, one) => total + shareOf(one), 0);
  if (sum === 0) return pick(all, random);
  let left = random() * sum;
  for (const one of all) {
    left -= shareOf(one);
    if (left < 0) return one;
  }
  return all.at(-1)!;
}

function likelyNumber(question: Question, random: Random): number {
  const [least, most] = question.possible!;
  const [low, high] = question.usual ?? question.possible!;
  const byRatio = low > 0;
  const to = (value: number) => (byRatio ? Math.log(value) : value);
  const back = (value: number) => (byRatio ? Math.exp(value) : value);
  const { assume } = question.unsure;
  const inside = typeof assume === 'number' && assume > low && assume < high;
  const middle = inside ? to(assume) : (to(low) + to(high)) / 2;
  const z = normal(random) / Z_95;
  const drawn = back(middle + z * (z < 0 ? middle - to(low) : to(high) - middle));
  const rounded = Math.min(most, Math.max(least, Number(drawn.toPrecision(3))));
  return outside(question, rounded) === null ? rounded : Math.round(rounded);
}

/** Source: Box and Muller 1958. */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
