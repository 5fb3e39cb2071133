import interview from '#compiled/questions.js';
import type { Next } from '../../advice/ask-next';
import { bankOf } from '../../advice/effect-of-answers';
import { answersKey, foundNext } from '../../advice/found-next';
import { answersAhead } from '../../advice/read-ahead';
import { inOnePiece, type Steps } from '../../advice/steps';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Later } from '../../faces/door';
import type { Answers } from '../../interview/answers';
import { besideTariff } from '../../interview/beside-tariff';
import type { NextStep } from '../../interview/next-step';
import { questionAt } from '../../interview/questions/relevant';
import { draftMaker } from '../../plan/draft/draft-of';
import { sayWhyNow } from '../../words/en/say-why-now';
import { showDraft } from './show-draft';

export interface DraftAll extends Pick<Required<Later>, 'draftOf' | 'next'> {
  /** The same as `next`, step by step; what was found before is there at once. */
  nextInSteps(answers: Answers): Steps<NextStep>;
  /** The answers as they could be once this question is answered, likeliest first. */
  likelyAfter(answers: Answers, questionId: string): Answers[];
}

/** The sums beside a question and what to ask next, from one memory of what was tried. */
export function draftAll(tariff: Tariff | null, asOf: string): DraftAll {
  const bank = bankOf(besideTariff(interview, tariff !== null), asOf);
  const draftOf = draftMaker(interview, tariff, bank.trialOf);
  const find = foundNext(bank);
  return {
    likelyAfter: (answers, questionId) =>
      answersAhead(questionAt(bank, questionId), bank.knownOf(answers)).map((answer) => ({
        ...answers,
        [questionId]: answer,
      })),
    draftOf: lately((answers) => showDraft(draftOf(answers))),
    next: (answers) => said(inOnePiece(find(answers))),
    *nextInSteps(answers) {
      return said(yield* find(answers));
    },
  };
}

/** How many drafts are kept: those of what was leaned towards last. */
const DRAFTS_KEPT = 3;

/** The last few are there at once. */
function lately<T>(make: (answers: Answers) => T): (answers: Answers) => T {
  const kept = new Map<string, T>();
  return (answers) => {
    const key = answersKey(answers);
    const made = kept.get(key) ?? make(answers);
    kept.delete(key);
    kept.set(key, made);
    if (kept.size > DRAFTS_KEPT) kept.delete(kept.keys().next().value!);
    return made;
  };
}

function said(next: Next): NextStep {
  if (next.code === 'enough') return next;
  const { code, questionId, whyNow, openCount } = next;
  return { code, questionId, why: sayWhyNow(whyNow), left: openCount };
}
