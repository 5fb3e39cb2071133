import shares from '#compiled/answer-shares.js';
import { type Answer, NOT_SURE } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import type { Resolved } from '../interview/questions/resolve';
import { likelyAnswers, unsureShare } from './likely-answers';

/**
 * What could be answered to a question, the likeliest first, for whoever works ahead while it is read: each choice, the list
 * most homes tick, numbers that are often typed, the ends of the usual range, and "not sure".
 */
export function answersAhead(question: Question, known: Resolved): Answer[] {
  const unsure = unsureShare(question);
  const often = shares[question.id]?.often ?? [];
  const told = likelyAnswers(question, known).map(({ answer, share }) => ({
    answer,
    // A number is seldom the very end of a range.
    share: question.kind === 'number' ? 0 : share * (1 - unsure),
  }));
  const typed = often.map((answer, i) => ({ answer, share: (1 - unsure) / (i + 2) }));
  const all: { answer: Answer; share: number }[] = [
    ...typed,
    ...told,
    { answer: NOT_SURE, share: unsure },
  ];
  const inOrder = all.sort((a, b) => b.share - a.share).map(({ answer }) => answer);
  return inOrder.filter((one, i) => inOrder.findIndex((other) => same(one, other)) === i);
}

const same = (a: Answer, b: Answer) => JSON.stringify(a) === JSON.stringify(b);
