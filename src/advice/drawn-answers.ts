import { type Answer, type Answers, NOT_SURE } from '../interview/answers';
import { holds } from '../interview/questions/holds';
import type { Question } from '../interview/questions/question';
import type { Known } from '../interview/questions/resolve';
import type { Bank } from './effect-of-answers';
import { likelyAnswers, unsureShare } from './likely-answers';
import { usualHere } from './usual-here';

/** How many whole files are drawn: a prime, so that every question goes through its answers in an order of its own. */
export const DRAWS = 31;

/**
 * All that is still open, answered at once as one home of many might: draw `k` of `DRAWS`. Over all draws each question
 * gets its answers as often as they are likely, "not sure" among them, and any two questions in all their ways. Nothing
 * is left to chance: the same answers have the same draws.
 */
export function drawnAnswers(answers: Answers, { interview, trialOf }: Bank, k: number): Answers {
  const { home } = trialOf(answers);
  const known = new Map<string, Known>();
  const drawn: Record<string, Answer> = {};
  for (const question of interview.questions) {
    if (question.when !== undefined && !holds(question.when, known)) continue;
    const told = answers[question.id];
    // What is asked of nobody by itself is not found out by asking on.
    const answer =
      told ?? (question.optional ? undefined : drawOne(usualHere(question, home), known, k));
    if (told === undefined && answer !== undefined) drawn[question.id] = answer;
    known.set(
      question.id,
      answer === undefined || answer === NOT_SURE
        ? { value: question.unsure.assume, how: 'unsure' }
        : { value: answer, how: 'told' },
    );
  }
  return drawn;
}

/** What this draw answers; undefined where it is not sure, or where any answer changes nothing. */
function drawOne(question: Question | null, known: ReadonlyMap<string, Known>, k: number) {
  if (question === null) return undefined;
  const unsure = unsureShare(question);
  let left = (placeOf(question.id, k) - unsure) / (1 - unsure);
  if (left < 0) return undefined;
  for (const { answer, share } of likelyAnswers(question, known)) {
    left -= share;
    if (left < 0) return answer;
  }
  return undefined;
}

/** Where in 0 to 1 a draw stands for a question: each of so many even steps once, in an order of the question's own. */
function placeOf(id: string, k: number): number {
  const hash = hashOf(id);
  const step = 1 + (hash % (DRAWS - 1));
  return (((k * step + (hash >>> 8)) % DRAWS) + 0.5) / DRAWS;
}

/** FNV-1a, 32 bits. Source: Fowler, Noll and Vo. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash;
}
