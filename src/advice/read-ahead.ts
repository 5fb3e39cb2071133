import shares from '#compiled/answer-shares.js';
import { type Answer, NOT_SURE } from '../interview/answers';
import { holds } from '../interview/questions/holds';
import type { Question } from '../interview/questions/question';
import type { Resolved } from '../interview/questions/resolve';
import { likelyAnswers, unsureShare } from './likely-answers';

/**
 * What could be answered to a question, the likeliest first, for whoever works ahead while it is read: each choice, the list
 * most homes tick, numbers that are often typed, the ends of the usual range, and "not sure". Behind these, as long as there
 * is time: lists of one tick, and of two.
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
  const inOrder = [...byShare(all), ...fewTicks(question, known)];
  const found = new Set<string>();
  return inOrder.filter((one) => {
    const key = JSON.stringify(one);
    return !found.has(key) && found.add(key);
  });
}

const byShare = (all: readonly { answer: Answer; share: number }[]): Answer[] =>
  [...all].sort((a, b) => b.share - a.share).map(({ answer }) => answer);

/** Lists of a line that stands alone, of one tick, and of two: the likeliest first, as if each were ticked by itself. */
function fewTicks({ id, kind, choices = [] }: Question, known: Resolved): Answer[] {
  if (kind !== 'choices') return [];
  const offered = choices.filter(({ when }) => when === undefined || holds(when, known));
  const share = (choice: string) => shares[id]?.of[choice] ?? 0;
  const [alone, ticks] = [true, false].map((is) =>
    offered.filter((one) => (one.alone === true) === is).map((one) => one.id),
  ) as [string[], string[]];
  const one = [...alone, ...ticks].map((a) => ({ answer: [a], share: share(a) }));
  const two = ticks.flatMap((a, i) =>
    ticks.slice(i + 1).map((b) => ({ answer: [a, b], share: share(a) * share(b) })),
  );
  return byShare([...one, ...two]);
}
