import interview from '#compiled/questions.js';
import type { Next } from '../../advice/ask-next';
import { type Bank, bankOf } from '../../advice/effect-of-answers';
import { answersKey, foundNext } from '../../advice/found-next';
import { answersAhead } from '../../advice/read-ahead';
import { inOnePiece, type Steps } from '../../advice/steps';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Later } from '../../faces/door';
import { type Answers, NOT_SURE } from '../../interview/answers';
import { besideTariff } from '../../interview/beside-tariff';
import type { Again, NextStep } from '../../interview/next-step';
import { questionAt } from '../../interview/questions/relevant';
import { draftMaker } from '../../plan/draft/draft-of';
import { missingForAdvice } from '../../plan/sureness/floor-of-answers';
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
    next: (answers) => said(inOnePiece(find(answers)), answers, bank),
    *nextInSteps(answers) {
      return said(yield* find(answers), answers, bank);
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

function said(next: Next, answers: Answers, bank: Bank): NextStep {
  if (next.code === 'enough') return { ...next, again: againOf(answers, bank) };
  const { code, questionId, whyNow, openCount } = next;
  return { code, questionId, why: sayWhyNow(whyNow), left: openCount };
}

/** "Not sure", where nothing can be advised without it. */
function againOf(answers: Answers, { trialOf }: Bank): Again[] {
  return missingForAdvice(trialOf(answers).home)
    .filter((id) => answers[id] === NOT_SURE)
    .map((questionId) => ({ questionId, why: sayWhyNow({ code: 'asked-again' }) }));
}
