import shares from '#compiled/answer-shares.js';
import { type Answer, NOT_SURE } from '../interview/answers';
import { holds } from '../interview/questions/holds';
import type { Question } from '../interview/questions/question';
import type { Resolved } from '../interview/questions/resolve';
import { likelyAnswers, unsureShare } from './likely-answers';

/**
 * What could be answered to a question, the likeliest first, for whoever works ahead while it is read: each choice, the list
 * most homes tick, numbers that are often typed, the ends of the usual range, and "not sure". Behind these, as long as there
 * is time: lists of one tick.
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
  const inOrder = [...byShare(all), ...alone(question, known)];
  const found = new Set<string>();
  return inOrder.filter((one) => {
    const key = JSON.stringify(one);
    return !found.has(key) && found.add(key);
  });
}

const byShare = (all: readonly { answer: Answer; share: number }[]): Answer[] =>
  [...all].sort((a, b) => b.share - a.share).map(({ answer }) => answer);

/** Each line ticked alone, the likeliest first. */
function alone({ id, kind, choices = [] }: Question, known: Resolved): Answer[] {
  if (kind !== 'choices') return [];
  const offered = choices.filter(({ when }) => when === undefined || holds(when, known));
  return byShare(offered.map((one) => ({ answer: [one.id], share: shares[id]?.of[one.id] ?? 0 })));
}
